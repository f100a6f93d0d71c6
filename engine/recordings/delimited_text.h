// Force traces from delimited text, read as the bytes come.
//
// Found in the first 64 kB: what parts the cells (tab, semicolon, comma, vertical bar, blanks; quoted cells [Rfc4180]),
// decimal point or comma, UTF-8 with or without byte-order mark, LF, CRLF or CR, any lines above the numbers: names,
// units (N, kN, kg, lbf, V), a rate in Hz. A time column (s or ms) must rise by equal steps, but for its rounding or a
// tenth of a step, and gives the rate. Each sample is the float nearest to the decimal written, times the newtons of its
// unit: kg x 9.80665, lbf x 4.4482216152605, V x newtons_per_volt. A trace whose mean is negative is turned.
// Columns: those named in RecordingGiven, else by their names ("Fz", "vertical", "force", left, right; a total beside
// left and right is no third plate), else what is left over when that is one or two. Notes say what was taken for what.
// Units and range: newtons to +-100,000; 50 to 20,000 Hz; 2 to most_samples samples; 512 columns; 64 kB a line.
// Refusals, each with its line and column: unreadable_file (empty, no text, UTF-16, text or nothing in a cell, another
//   number of cells, a header in the middle), wrong_rate (uneven times; a rate given that the times deny), missing_field
//   (rate_hz, unit, newtons_per_volt, vertical), unknown_name (of a column), out_of_range (samples, newtons).
// A last line that nothing ends is left out, and said so, when it has too few cells or decimals.
// What it cannot tell: which axis points up, or whose foot stands where, when neither file nor person says; whether a
// last line without an end lost digits where the file writes them unevenly; a line left out when there are no times.
// Memory: the samples kept and some hundred kB, however long the file is.
//
// Example: DelimitedTextReader reader({}); reader.take("Time [s],Fz [N]\n0,700\n0.001,"); reader.take("701\n");
//          reader.finish()->rate_hz == 1000
#pragma once

#include "recordings/force_recording.h"

#include <memory>
#include <string_view>

namespace amentum {

class DelimitedTextReader {
public:
    explicit DelimitedTextReader(RecordingGiven given);
    DelimitedTextReader(DelimitedTextReader&&) noexcept;
    DelimitedTextReader& operator=(DelimitedTextReader&&) noexcept;
    ~DelimitedTextReader();

    // The next bytes; once refused, every later call refuses alike.
    Result<Done> take(std::string_view piece);

    // All bytes were given. May be called once.
    Result<ForceRecording> finish();

private:
    class Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace amentum
