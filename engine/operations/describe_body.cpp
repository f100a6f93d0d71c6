#include "operations/describe_body.h"

#include "operations/inside/body_given.h"
#include "operations/inside/length_effects.h"
#include "values/shortest_decimal.h"

namespace amentum {
namespace {

std::vector<ShownBodyPart> shown_parts(const BodyGivenHere& given) {
    const auto length = shown_unit(TestUnit::metre, given.facility);
    const auto mass = shown_mass(given.facility.mass_unit);
    std::vector<ShownBodyPart> shown;
    for (std::size_t i = 0; i < given.body.parts.size(); ++i) {
        const BodyPart& part = given.body.parts[i];
        shown.push_back({part.row, part_name(part, given.body.given.table), ends_in_words(part),
                         part.length.metres() * length.factor, part.mass.kilograms() * mass.factor,
                         part.centre.metres() * length.factor, part.radius.metres() * length.factor,
                         given.part_from[i], part.taped});
    }
    return shown;
}

std::vector<std::string> words_of_body(const BodyGivenHere& given) {
    const Body& body = given.body;
    const auto length = shown_unit(TestUnit::metre, given.facility);
    const auto said = [&](double metres) {
        return format_fixed(metres * length.factor, length.decimals) + " " + length.unit;
    };
    int taped = 0;
    for (const auto& part : body.parts)
        taped += part.taped;
    return {given.shown.name + ": thigh " + said(body.thigh.length) + ", shank " + said(body.shank.length) +
                ", trunk from hips to shoulders " + said(body.trunk.length) + ", arm to the grip " +
                said(body.arm_length()) + ".",
            taped == 0 ? "Every length is scaled by standing height: a person of that height may differ by "
                         "several per cent."
                       : std::to_string(taped) + (taped == 1 ? " length is" : " lengths are") +
                             " taped, the others scaled by standing height. A taped length moves a part's "
                             "centre and inertia with it, never its mass.",
            "Lengths run between joint centres, which lie under the skin: where exactly, no tape can tell."};
}

} // namespace

Result<DescribeBodyAnswer> describe_body(Workplace& workplace, const DescribeBodyRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto given = body_given(inside, *view, request);
    if (!given)
        return given.refusal();
    const auto length = shown_unit(TestUnit::metre, given->facility);
    const auto effects = length_effects(*given);
    DescribeBodyAnswer answer{given->shown,
                              shown_parts(*given),
                              given->body.ankle_height * length.factor,
                              given->body.mass_of_parts() * shown_mass(given->facility.mass_unit).factor,
                              effects.lift,
                              effects.effects,
                              words_of_body(*given),
                              given->cautions,
                              effects.tape_next,
                              given->sources};
    if (!effects.why_none.empty())
        answer.words.push_back(effects.why_none);
    answer.sources.insert(answer.sources.end(), effects.sources.begin(), effects.sources.end());
    return answer;
}

} // namespace amentum
