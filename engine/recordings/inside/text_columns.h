// Which columns of a delimited text are the time and the forces: said by the person, told by their names, or left over.
//
// Names are looked at word by word. A column called total, sum, both or net beside a left and a right one is their sum
// and no third plate. A time column is one called so, or an unnamed one that rises by equal steps; a column that counts
// samples or frames is neither time nor force.
// What it cannot tell: which axis points up when the names do not say; it then takes what is left over when that is one
// or two columns, and says so.
#pragma once

#include "recordings/force_recording.h"
#include "recordings/inside/text_layout.h"

#include <optional>
#include <vector>

namespace amentum {

// Two times in a row are even when their step is the usual one but for rounding to the last digit written, or for a
// tenth of a step, which moves no impulse noticeably; a line left out is always further off.
inline double allowed_off(double usual, double quantum) {
    return 0.999 * quantum > 0.1 * usual ? 0.999 * quantum : 0.1 * usual;
}
inline bool is_even_step(double step, double usual, double allowed) {
    return step - usual <= allowed && usual - step <= allowed;
}

// Times of the first lines, as the file writes them.
struct TimeColumn {
    std::size_t column;
    double step;    // mean of the first lines, in the file's unit
    double quantum; // the last digit written, in the file's unit; 0 when beyond the 15th
    double seconds; // one unit of the file
    bool unit_guessed;
};

struct ChosenColumn {
    std::size_t column;
    double newtons; // for one unit written
    Side side = Side::none;
};

struct ChosenColumns {
    std::optional<TimeColumn> time;
    std::vector<ChosenColumn> vertical;
    std::vector<ChosenColumn> lateral; // as many as vertical, or none
    std::vector<std::string> notes;
};

Result<ChosenColumns> choose_columns(const TextLayout& layout, const RecordingGiven& given);

// Its steps. The time column only when one is there; refuses one that cannot give a rate.
Result<std::optional<TimeColumn>> find_time(const TextLayout& layout, const RecordingGiven& given,
                                            std::vector<std::string>& notes);
bool counts_samples(const TextLayout& layout, std::size_t column);

enum class ForceWord { none, elsewhere, weak, strong }; // another axis or quantity; "force"; "vertical", "Fz"
ForceWord force_word(std::string_view name);
Side side_word(std::string_view name);
bool is_total(std::string_view name);

} // namespace amentum
