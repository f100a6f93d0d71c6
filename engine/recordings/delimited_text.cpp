#include "recordings/delimited_text.h"

#include "recordings/inside/text_table.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

// Said or missing before any line is read, so that nobody waits for a long file to hear it.
std::optional<Refusal> check_rate(const TextLayout& layout, const ChosenColumns& chosen,
                                  const RecordingGiven& given) {
    const auto rate = given.rate_hz ? given.rate_hz : layout.header_rate;
    if (!rate && !chosen.time)
        return Refusal{
            RefusalCode::missing_field,
            "The file has no time column and no line with its rate; please give the samples a second. It "
            "has: " +
                layout.column_list() + ".",
            "rate_hz", "", "50 to 20,000 Hz"};
    if (rate && (given.rate_hz || !chosen.time) && !(*rate >= lowest_rate_hz && *rate <= highest_rate_hz))
        return Refusal{RefusalCode::wrong_rate,
                       "The rate is " + format_shortest(*rate) + " Hz, but must be 50 to 20,000 Hz.",
                       given.rate_hz ? "rate_hz" : layout.header_rate_line, format_shortest(*rate),
                       "50 to 20,000 Hz"};
    return std::nullopt;
}

} // namespace

class DelimitedTextReader::Inside {
public:
    explicit Inside(RecordingGiven given) : given_(std::move(given)) {}

    std::optional<Refusal> take(std::string_view piece) {
        if (!refusal_ && !table_) {
            const std::size_t wanted = std::min(sniffed_bytes - kept_.size(), piece.size());
            kept_ += piece.substr(0, wanted);
            piece.remove_prefix(wanted);
            if (kept_.size() == sniffed_bytes)
                refusal_ = start(false);
        }
        if (!refusal_ && table_)
            refusal_ = feed(piece);
        return refusal_;
    }

    Result<ForceRecording> finish() {
        if (!refusal_ && !table_)
            refusal_ = start(true);
        if (!refusal_ && !kept_.empty())
            refusal_ = table_->take_last(kept_);
        if (refusal_)
            return *refusal_;
        return table_->finish(given_);
    }

private:
    std::optional<Refusal> start(bool whole) {
        auto layout = find_layout(kept_, whole);
        if (!layout)
            return layout.refusal();
        auto chosen = choose_columns(*layout, given_);
        if (!chosen)
            return chosen.refusal();
        if (auto refusal = check_rate(*layout, *chosen, given_))
            return refusal;
        line_end_ = layout->line_end;
        const std::string beginning = kept_.substr(layout->first_data_byte);
        kept_.clear();
        table_ = std::make_unique<TextTable>(*std::move(layout), *std::move(chosen));
        return feed(beginning);
    }

    // kept_ holds the beginning of a line whose end has not come yet.
    std::optional<Refusal> feed(std::string_view text) {
        std::size_t taken = 0;
        if (!kept_.empty()) {
            const std::size_t end = std::min(text.find(line_end_), text.size() - 1) + 1;
            kept_ += text.substr(0, end);
            text.remove_prefix(end);
            if (auto refusal = take_kept())
                return refusal;
        }
        if (auto refusal = table_->take(text, taken))
            return refusal;
        kept_ += text.substr(taken);
        return kept_.size() > longest_line ? std::optional(table_->refuse_long_line()) : std::nullopt;
    }

    std::optional<Refusal> take_kept() {
        std::size_t taken = 0;
        if (!kept_.ends_with(line_end_))
            return std::nullopt;
        auto refusal = table_->take(kept_, taken);
        kept_.clear();
        return refusal;
    }

    RecordingGiven given_;
    std::string kept_; // the beginning of the file until its layout is known, then of a line
    char line_end_ = '\n';
    std::unique_ptr<TextTable> table_;
    std::optional<Refusal> refusal_;
};

DelimitedTextReader::DelimitedTextReader(RecordingGiven given)
    : inside_(std::make_unique<Inside>(std::move(given))) {}
DelimitedTextReader::DelimitedTextReader(DelimitedTextReader&&) noexcept = default;
DelimitedTextReader& DelimitedTextReader::operator=(DelimitedTextReader&&) noexcept = default;
DelimitedTextReader::~DelimitedTextReader() = default;

Result<Done> DelimitedTextReader::take(std::string_view piece) {
    if (auto refusal = inside_->take(piece))
        return *refusal;
    return Done{};
}

Result<ForceRecording> DelimitedTextReader::finish() {
    return inside_->finish();
}

} // namespace amentum
