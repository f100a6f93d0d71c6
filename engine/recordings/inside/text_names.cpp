#include "recordings/inside/text_columns.h"

#include <algorithm>

namespace amentum {
namespace {

// Words of the trade, common practice, no source. z is taken as up, as most plates have it.
constexpr std::string_view upward[]{"fz", "z",    "vertical", "vert", "fvert",
                                    "fv", "vgrf", "grfz",     "grfv", "grfvert"};
constexpr std::string_view force[]{"force", "forces", "grf",    "load",   "total",
                                   "plate", "f",      "newton", "newtons"};
constexpr std::string_view other[]{
    "fx",           "fy",       "mx",     "my",     "mz",           "cop",
    "copx",         "copy",     "x",      "y",      "ax",           "ay",
    "lateral",      "medial",   "ml",     "ap",     "anterior",     "posterior",
    "horizontal",   "shear",    "moment", "torque", "velocity",     "acceleration",
    "displacement", "position", "power",  "emg",    "mediolateral", "anteroposterior",
    "trigger",      "marker",   "event",  "impulse"};

// "fz1" and "fz_left" read as fz: a number at the end counts plates.
bool any_word(std::string_view name, std::span<const std::string_view> wanted) {
    for (std::string word : words_in(name)) {
        const std::size_t letters = word.find_last_not_of("0123456789");
        if (letters != word.npos)
            word.erase(letters + 1);
        if (std::find(wanted.begin(), wanted.end(), word) != wanted.end())
            return true;
    }
    return false;
}

} // namespace

ForceWord force_word(std::string_view name) {
    if (any_word(name, other))
        return ForceWord::elsewhere;
    if (any_word(name, upward))
        return ForceWord::strong;
    return any_word(name, force) || side_word(name) != Side::none ? ForceWord::weak : ForceWord::none;
}

Side side_word(std::string_view name) {
    constexpr std::string_view left[]{"left", "l", "lt", "fzl", "lfz"};
    constexpr std::string_view right[]{"right", "r", "rt", "fzr", "rfz"};
    const bool is_left = any_word(name, left), is_right = any_word(name, right);
    return is_left == is_right ? Side::none : is_left ? Side::left : Side::right;
}

bool is_total(std::string_view name) {
    constexpr std::string_view sums[]{"total", "sum", "both", "net", "combined", "summed"};
    return any_word(name, sums);
}

} // namespace amentum
