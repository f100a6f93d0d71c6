#include "recordings/inside/c3d_channels.h"

#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_text.h"
#include "values/quantity.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

void add_note(std::vector<std::string>& notes, const std::string& note) {
    if (std::find(notes.begin(), notes.end(), note) == notes.end())
        notes.push_back(note);
}

std::optional<double> newtons_of_word(const std::string& word) {
    if (word == "n" || word == "newton" || word == "newtons")
        return 1;
    if (word == "kn")
        return 1000;
    if (word == "kg" || word == "kgf" || word == "kp")
        return Force::newtons_per_kilogram_force;
    return std::nullopt;
}

Result<double> newtons_of_given(ForceUnit unit, const RecordingGiven& given) {
    if (unit == ForceUnit::newton)
        return 1.0;
    if (unit == ForceUnit::kilogram)
        return Force::newtons_per_kilogram_force;
    if (!given.newtons_per_volt)
        return refuse_missing("newtons_per_volt", "how many newtons one volt stands for, as the unit is V");
    return *given.newtons_per_volt;
}

} // namespace

std::string C3dChannels::name(std::size_t channel) const {
    const std::string label = channel < labels.size() ? labels[channel] : "";
    return "analog channel " + std::to_string(channel + 1) + (label.empty() ? "" : " (" + label + ")");
}

Result<C3dChannels> c3d_channels(const C3dHead& head, const C3dDataLayout& layout) {
    C3dChannels channels{
        layout.channels,
        head.joined_texts("ANALOG", "LABELS"),
        head.joined_texts("ANALOG", "UNITS"),
        head.joined_numbers("ANALOG", "SCALE"),
        head.joined_numbers("ANALOG", "OFFSET",
                            layout.unsigned_analog ? C3dWhole::counted : C3dWhole::with_sign),
        1,
        {}};
    const auto general = head.number("ANALOG", "GEN_SCALE");
    if (!general)
        channels.notes.push_back("The file has no ANALOG:GEN_SCALE; it is taken as 1.");
    else if (!std::isfinite(*general) || *general == 0)
        return refuse_c3d("ANALOG:GEN_SCALE",
                          "ANALOG:GEN_SCALE is " + format_shortest(*general) +
                              ", which would make every force 0 or none.",
                          format_shortest(*general), "any number but 0");
    channels.general_scale = general.value_or(1);
    return channels;
}

Result<C3dTerm> c3d_term(C3dChannels& channels, int number, double share, double newtons,
                         const std::string& field) {
    if (number < 1 || static_cast<std::uint64_t>(number) > channels.used)
        return refuse_c3d(field,
                          field + " names analog channel " + std::to_string(number) + ", but the file has " +
                              std::to_string(channels.used) + ".",
                          std::to_string(number), "1 to " + std::to_string(channels.used));
    const auto channel = static_cast<std::size_t>(number - 1);
    const std::string name = channels.name(channel);
    if (channel >= channels.scales.size())
        return refuse_c3d("ANALOG:SCALE",
                          "ANALOG:SCALE has " + std::to_string(channels.scales.size()) +
                              " values and none for " + name + ".",
                          std::to_string(channels.scales.size()), "a value for each channel used");
    const double scale = channels.scales[channel];
    const double offset = channel < channels.offsets.size() ? channels.offsets[channel] : 0;
    if (channel >= channels.offsets.size())
        add_note(channels.notes, "The file has no ANALOG:OFFSET for " + name + "; it is taken as 0.");
    if (!std::isfinite(scale) || scale == 0 || !std::isfinite(offset))
        return refuse_c3d("ANALOG:SCALE",
                          "ANALOG:SCALE of " + name + " is " + format_shortest(scale) +
                              " and ANALOG:OFFSET " + format_shortest(offset) +
                              "; with these its values tell nothing.",
                          format_shortest(scale), "a scale that is not 0, and a finite offset");
    const double weight = scale * channels.general_scale * share * newtons;
    if (!std::isfinite(weight))
        return refuse_c3d(field, field + " gives a factor for " + name + " that is not a number.",
                          format_shortest(weight), "a finite number");
    return C3dTerm{channel, offset, weight};
}

Result<double> newtons_of_channel(C3dChannels& channels, int number, const RecordingGiven& given) {
    if (given.unit)
        return newtons_of_given(*given.unit, given);
    const auto channel = static_cast<std::size_t>(std::max(1, number) - 1);
    const std::string unit = channel < channels.units.size() ? channels.units[channel] : "";
    if (unit.empty()) {
        add_note(channels.notes, "ANALOG:UNITS gives no unit for " + channels.name(channel) +
                                     "; its values are taken as newtons.");
        return 1.0;
    }
    const auto newtons = newtons_of_word(in_small_letters(unit));
    if (!newtons)
        return refuse_c3d("unit",
                          "ANALOG:UNITS of " + channels.name(channel) + " is \"" + unit +
                              "\". Please say what its scaled values are: N, kg, or V with newtons_per_volt.",
                          unit, "N, kg or V", RefusalCode::missing_field);
    if (*newtons != 1)
        add_note(channels.notes, "Forces in " + unit + " (ANALOG:UNITS) were turned into newtons.");
    return *newtons;
}

} // namespace amentum
