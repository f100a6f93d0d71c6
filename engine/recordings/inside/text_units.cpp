#include "recordings/inside/text_units.h"

#include "recordings/inside/text_cells.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

struct KnownUnit {
    std::string_view text; // lower case
    double newtons = 0;    // for one of it; 0 when it is no force
    double seconds = 0;    // likewise
};

// kg: the standard gravity g = 9.80665 m/s2 makes it a force; lbf: 0.45359237 kg times g, exactly.
constexpr std::array<KnownUnit, 27> known{{{"n", 1},
                                           {"newton", 1},
                                           {"newtons", 1},
                                           {"kn", 1000},
                                           {"kg", 9.80665},
                                           {"kgf", 9.80665},
                                           {"lbf", 4.4482216152605},
                                           {"v"},
                                           {"volt"},
                                           {"volts"},
                                           {"mv"},
                                           {"s", 0, 1},
                                           {"sec", 0, 1},
                                           {"second", 0, 1},
                                           {"seconds", 0, 1},
                                           {"ms", 0, 0.001},
                                           {"msec", 0, 0.001},
                                           {"milliseconds", 0, 0.001},
                                           {"m"},
                                           {"cm"},
                                           {"mm"},
                                           {"nm"},
                                           {"n*m"},
                                           {"n.m"},
                                           {"n/kg"},
                                           {"w"},
                                           {"-"}}};

const KnownUnit* find_unit(std::string_view text) {
    const std::string lower = in_lower_case(bare_unit(text));
    const auto found =
        std::find_if(known.begin(), known.end(), [&](const auto& u) { return u.text == lower; });
    return found == known.end() ? nullptr : &*found;
}

} // namespace

std::string bare_unit(std::string_view cell) {
    cell = trimmed(cell);
    const bool bracketed = cell.size() > 2 && ((cell.front() == '(' && cell.back() == ')') ||
                                               (cell.front() == '[' && cell.back() == ']'));
    return std::string(bracketed ? trimmed(cell.substr(1, cell.size() - 2)) : cell);
}

bool is_unit(std::string_view cell) {
    return find_unit(cell) != nullptr;
}

std::string unit_in_name(std::string_view name) {
    for (const auto& [open, close] : {std::pair{'[', ']'}, std::pair{'(', ')'}}) {
        const std::size_t from = name.rfind(open);
        const std::size_t to = from == name.npos ? name.npos : name.find(close, from);
        if (to != name.npos && is_unit(name.substr(from + 1, to - from - 1)))
            return bare_unit(name.substr(from + 1, to - from - 1));
    }
    const std::size_t parted = name.find_last_of(" _,/"); // "Fz N", "time_s", "Force, kg"
    if (parted == name.npos || parted == 0 || !is_unit(name.substr(parted + 1)))
        return "";
    return bare_unit(name.substr(parted + 1));
}

std::optional<double> seconds_in(std::string_view unit) {
    const KnownUnit* found = find_unit(unit);
    return found && found->seconds != 0 ? std::optional(found->seconds) : std::nullopt;
}

std::optional<double> newtons_in(std::string_view unit) {
    const KnownUnit* found = find_unit(unit);
    return found && found->newtons != 0 ? std::optional(found->newtons) : std::nullopt;
}

std::optional<ForceUnit> force_unit(std::string_view unit) {
    const std::string lower = in_lower_case(bare_unit(unit));
    if (lower == "v" || lower == "volt" || lower == "volts")
        return ForceUnit::volt;
    if (lower == "kg" || lower == "kgf")
        return ForceUnit::kilogram;
    if (lower == "n" || lower == "newton" || lower == "newtons")
        return ForceUnit::newton;
    return std::nullopt;
}

} // namespace amentum
