#include "recordings/inside/text_table.h"

#include "recordings/inside/text_number.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr std::size_t reach = 16; // bytes before the end of a cell that the quick way of reading looks at

std::optional<std::size_t> decimals_of(std::string_view line, const TextLayout& layout) {
    const auto cells = split_cells(line, layout.rule.separator);
    if (!cells || cells->size() < layout.columns.size())
        return std::nullopt;
    const std::string& cell = (*cells)[layout.columns.size() - 1];
    const std::size_t mark = cell.find(layout.rule.mark);
    return mark == cell.npos ? 0 : cell.size() - mark - 1;
}

std::optional<std::size_t> usual_decimals(const TextLayout& layout) {
    std::optional<std::size_t> usual;
    for (const auto& row : layout.first_rows) {
        const auto here = decimals_of(row, layout);
        if (!here || (usual && *usual != *here))
            return std::nullopt;
        usual = here;
    }
    return usual;
}

} // namespace

TextTable::TextTable(TextLayout layout, ChosenColumns chosen)
    : layout_(std::move(layout)), chosen_(std::move(chosen)), line_(layout_.header_lines) {
    for (const auto* columns : {&chosen_.vertical, &chosen_.lateral})
        for (const auto& column : *columns)
            columns_.push_back(column.column);
    series_.resize(columns_.size());
    usual_decimals_ = usual_decimals(layout_);
}

std::optional<Refusal> TextTable::take(std::string_view text, std::size_t& taken) {
    const bool one_column = layout_.rule.separator == '\0';
    const CellMarks marks{one_column ? layout_.line_end : layout_.rule.separator, layout_.line_end,
                          layout_.rule.separator == ' '};
    taken = 0;
    while (taken < text.size()) {
        const std::size_t block = taken;
        const char* base = text.data() + block;
        ends_.scan(text.substr(block), marks);
        for (std::size_t k = 0;;) {
            k = take_plain_lines(base, k, taken >= reach);
            taken = k == 0 ? taken : block + ends_.positions()[k - 1] + 1;
            while (k < ends_.count() && base[ends_.positions()[k]] != layout_.line_end)
                ++k;
            if (k == ends_.count())
                break;
            const std::size_t end = block + ends_.positions()[k++];
            if (auto fault = take_line(text.substr(taken, end - taken)))
                return fault->refusal;
            taken = end + 1;
        }
        if (taken > block)
            continue;
        const std::size_t end = text.find(layout_.line_end, block); // a line longer than a block, or the rest
        if (end == text.npos)
            break;
        if (auto fault = take_line(text.substr(block, end - block)))
            return fault->refusal;
        taken = end + 1;
    }
    return std::nullopt;
}

// From the k-th cell end on; returns the cell end at which the first line that is not plain begins.
std::size_t TextTable::take_plain_lines(const char* base, std::size_t k, bool behind_reach) {
    const std::size_t stride = layout_.columns.size() + layout_.trailing_separator;
    const std::size_t series = columns_.size();
    if (!behind_reach || samples_ == 0 || blank_line_ || ends_.count() < k + stride || series > 4)
        return k;
    const std::size_t most = std::min((ends_.count() - k) / stride, most_samples - samples_);
    std::array<float*, 4> out{};
    std::array<std::size_t, 4> columns{};
    for (std::size_t s = 0; s < series; ++s) {
        series_[s].resize(samples_ + most);
        out[s] = series_[s].data() + samples_;
        columns[s] = columns_[s];
    }
    const char separator = layout_.rule.separator, line_end = layout_.line_end, mark = layout_.rule.mark;
    const bool trailing = layout_.trailing_separator, timed = chosen_.time.has_value();
    const TimeColumn time = chosen_.time.value_or(TimeColumn{});
    double last_time = last_time_;
    std::size_t lines = 0;
    for (const std::uint32_t* ends = ends_.positions() + k; lines < most; ++lines, ends += stride) {
        const std::uint32_t stop = ends[stride - 1];
        const std::uint32_t carriage = base[stop - 1] == '\r';
        bool plain = base[stop] == line_end;
        for (std::size_t c = 0; c + 1 < stride; ++c)
            plain &= base[ends[c]] == separator;
        if (!plain || (trailing && ends[stride - 2] + 1 + carriage != stop))
            break;
        const auto cell = [&](std::size_t c, auto read, auto& value) {
            const char* begin = base + ((ends - 1)[c] + 1); // wraps to 0 at the start
            const char* end = base + (ends[c] - (c + 1 == stride ? carriage : 0));
            while (begin < end && *begin == ' ')
                ++begin;
            return read(begin, end, mark, value);
        };
        double now = 0;
        if (timed &&
            !(cell(time.column, read_time, now) && is_even_step(now - last_time, time.step, time.quantum)))
            break;
        for (std::size_t s = 0; s < series; ++s)
            plain &= cell(columns[s], read_sample, out[s][lines]);
        if (!plain)
            break;
        last_time = now;
    }
    samples_ += lines;
    line_ += lines;
    last_time_ = timed ? last_time : last_time_;
    for (auto& each : series_)
        each.resize(samples_);
    return k + lines * stride;
}

std::optional<Refusal> TextTable::take_last(std::string_view line) {
    if (trimmed(line).empty())
        return std::nullopt;
    const std::size_t before = samples_;
    const auto fault = last_cell_is_short(line) ? std::optional<Fault>() : take_line(line);
    if (fault && !fault->in_last_cell)
        return fault->refusal;
    if (samples_ == before && !blank_line_)
        chosen_.notes.push_back("The last line, \"" + shown(trimmed(line)) +
                                "\", is cut off and was left out: nothing ends it.");
    return std::nullopt;
}

bool TextTable::last_cell_is_short(std::string_view line) const {
    const auto here = decimals_of(line, layout_);
    return usual_decimals_ && here && *here < *usual_decimals_;
}

} // namespace amentum
