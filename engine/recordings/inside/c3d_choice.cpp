#include "recordings/inside/c3d_choice.h"

#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_text.h"
#include "values/shortest_decimal.h"

#include <cmath>

namespace amentum {
namespace {

std::vector<std::string> names_of_plates(const std::vector<C3dPlate>& plates) {
    std::vector<std::string> names;
    for (const auto& plate : plates)
        names.push_back(std::to_string(plate.number));
    return names;
}

} // namespace

Result<C3dChoice> find_c3d_choice(const std::vector<C3dPlate>& plates, const C3dChannels& channels,
                                  const std::string& asked) {
    const auto number = parse_number(asked);
    const bool whole = number && *number == std::floor(*number);
    if (whole && !plates.empty() && *number >= 1 && *number <= static_cast<double>(plates.size()))
        return C3dChoice{static_cast<int>(*number), 0};
    if (whole && plates.empty() && *number >= 1 && *number <= static_cast<double>(channels.used))
        return C3dChoice{0, static_cast<int>(*number)};
    std::optional<int> found;
    const auto& labels = channels.labels;
    for (std::size_t i = 0; i < labels.size() && i < channels.used; ++i)
        if (!labels[i].empty() && in_small_letters(labels[i]) == in_small_letters(readable_text(asked))) {
            if (found)
                return refuse_c3d("vertical",
                                  "Two analog channels are called \"" + asked +
                                      "\": " + std::to_string(*found) + " and " + std::to_string(i + 1) + ".",
                                  asked, "a label that only one channel has");
            found = static_cast<int>(i + 1);
        }
    if (found)
        return C3dChoice{0, *found};
    auto known = names_of_plates(plates);
    known.insert(known.end(), labels.begin(), labels.end());
    return refuse_unknown("force plate or analog channel", asked, known);
}

Result<std::vector<C3dChoice>> choose_c3d_plates(const RecordingGiven& given,
                                                 const std::vector<C3dPlate>& plates,
                                                 const C3dChannels& channels) {
    std::vector<C3dChoice> choices;
    for (const auto& asked : given.vertical) {
        const auto choice = find_c3d_choice(plates, channels, asked);
        if (!choice)
            return choice.refusal();
        choices.push_back(*choice);
    }
    if (choices.size() > 2 || (choices.size() == 2 && choices[0] == choices[1]))
        return refuse_c3d("vertical", "One or two different plates can be read together.",
                          listed(given.vertical), "one or two plates, left foot first",
                          RefusalCode::out_of_range);
    if (!choices.empty())
        return choices;
    if (plates.empty())
        return refuse_c3d(
            "vertical",
            "The file describes no force plate (FORCE_PLATFORM:USED is 0 or missing). Please name the "
            "analog channel of the vertical force: " +
                listed(channels.labels) + ".",
            "", listed(channels.labels), RefusalCode::missing_field);
    if (plates.size() > 2)
        return refuse_c3d("vertical",
                          "The file has " + std::to_string(plates.size()) +
                              " force plates; please say which one or two of them, left foot first.",
                          "", "one or two of " + listed(names_of_plates(plates), 64),
                          RefusalCode::missing_field);
    for (const auto& plate : plates)
        choices.push_back({plate.number, 0});
    return choices;
}

} // namespace amentum
