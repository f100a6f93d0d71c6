// The lines of numbers of a delimited text, turned to series of floats as they come.
//
// A plain line (as many cells as all others, plain decimals, an even step of time) is read by take_narrow_lines, by its
// shape, or in files of long lines by take_wide_lines, cell by cell. Any other goes through take_line, which reads it
// with care or refuses it. The quick ways never refuse, and give the same samples to the last bit.
#pragma once

#include "recordings/inside/text_columns.h"
#include "recordings/inside/text_scan.h"
#include "recordings/inside/text_shapes.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

inline constexpr std::size_t longest_line = 65536; // bytes

class TextTable {
public:
    TextTable(TextLayout layout, ChosenColumns chosen);

    // Whole lines only; `taken` is what was read of the text, up to its last line end.
    std::optional<Refusal> take(std::string_view text, std::size_t& taken);

    // The last line when nothing ends it: left out with a note when it is cut off.
    std::optional<Refusal> take_last(std::string_view line);

    // The next line, to be read with take, has grown too long.
    Refusal refuse_long_line() const;

    Result<ForceRecording> finish(const RecordingGiven& given);

private:
    struct Fault {
        Refusal refusal;
        bool in_last_cell; // or too few cells: a line cut off looks like this
    };

    // The bytes of the plain lines read from `from` on; 0 when the next line is not plain or not whole.
    std::size_t take_narrow_lines(std::string_view text, std::size_t from);
    std::size_t take_wide_lines(std::string_view text, std::size_t from);
    std::size_t take_shaped_lines(const char* lines, std::size_t bytes);
    template <bool timed, std::size_t most_series>
    std::size_t take_shapes(const char* lines, std::size_t bytes);
    std::size_t room_for(std::size_t lines); // samples that may come now; the series are made so much longer
    void keep(std::size_t lines);            // of which so many came

    std::optional<Fault> take_line(std::string_view line);
    std::optional<Fault> check_cells(const std::vector<std::string>& cells) const;
    std::optional<Fault> take_cells(const std::vector<std::string>& cells);
    std::optional<Fault> take_time(const std::string& cell);
    Fault fault_in(std::size_t column, RefusalCode code, std::string sentence, const std::string& given,
                   std::string allowed) const;
    bool last_cell_is_short(std::string_view line) const;

    Result<double> rate(const RecordingGiven& given);
    std::optional<Refusal> turn_to_newtons(ForceRecording& recording);
    void describe(ForceRecording& recording, const std::string& rate_from);

    TextLayout layout_;
    ChosenColumns chosen_;
    LineShapes shapes_;
    std::vector<std::size_t> columns_;       // of the series: vertical, then lateral
    std::vector<std::vector<float>> series_; // as written, in the file's unit
    std::size_t samples_ = 0;
    std::size_t line_ = 0;                      // lines read so far
    std::optional<std::size_t> blank_line_;     // after which nothing may follow
    double first_time_ = 0, last_time_ = 0;     // in the file's unit
    std::optional<std::size_t> usual_decimals_; // of the last column, when it always has as many
    std::string rate_source_;
    bool narrow_ = true;          // the lines are short enough to have shapes
    std::size_t usual_bytes_ = 1; // of a line
    LineMasks masks_;
    CellEnds ends_;
};

} // namespace amentum
