#include "operations/inside/body_given.h"

#include "operations/inside/typed_quantity.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr int adult_years = 18;

struct Origin {
    double si; // m or kg
    std::string field;
    std::string from; // "held", "taped 2026-04-02", "given"
    ShownUnit unit;
};

struct TapedField {
    Segment segment;
    const char* name; // of the request's field
    const char* test;
    std::optional<double> BodyRequest::*cm;
    std::optional<double> BodyRequest::*in;
};
constexpr std::array<TapedField, 6> taped_fields{{
    {Segment::thigh, "thigh", "thigh_length", &BodyRequest::thigh_cm, &BodyRequest::thigh_in},
    {Segment::shank, "shank", "shank_length", &BodyRequest::shank_cm, &BodyRequest::shank_in},
    {Segment::trunk, "trunk", "trunk_length", &BodyRequest::trunk_cm, &BodyRequest::trunk_in},
    {Segment::upper_arm, "upper_arm", "upper_arm_length", &BodyRequest::upper_arm_cm,
     &BodyRequest::upper_arm_in},
    {Segment::forearm, "forearm", "forearm_length", &BodyRequest::forearm_cm, &BodyRequest::forearm_in},
    {Segment::foot, "foot", "foot_length", &BodyRequest::foot_cm, &BodyRequest::foot_in},
}};

std::string whose(const Athlete* athlete) {
    return athlete ? "none is held for " + athlete->name : std::string("it is needed without an athlete");
}

Result<Origin> stature_of(const FacilityView& view, const Athlete* athlete, const BodyRequest& request,
                          const Facility& facility) {
    const auto typed = typed_length("stature", request.stature_cm, request.stature_in, facility);
    if (!typed)
        return typed.refusal();
    if (typed->length)
        return Origin{typed->length->metres(), typed->field, "given", typed->unit};
    if (const auto* test = latest_result(view, athlete, "stature"))
        return Origin{test->value, typed->field, "measured " + test->date.text(), typed->unit};
    if (athlete && athlete->stature)
        return Origin{athlete->stature->metres(), typed->field, "held", typed->unit};
    return refuse_missing(typed->field, "the standing height without shoes; " + whose(athlete));
}

Result<Origin> mass_of(const FacilityView& view, const Athlete* athlete, const BodyRequest& request,
                       const Facility& facility) {
    const auto typed = typed_mass("body_mass", request.body_mass_kg, request.body_mass_lb, facility);
    if (!typed)
        return typed.refusal();
    if (typed->mass)
        return Origin{typed->mass->kilograms(), typed->field, "given", typed->unit};
    if (const auto* test = latest_result(view, athlete, "body_mass"))
        return Origin{test->value, typed->field, "weighed " + test->date.text(), typed->unit};
    return refuse_missing(typed->field, "the body mass; " + whose(athlete));
}

Result<std::vector<std::pair<Segment, Origin>>> taped_of(const FacilityView& view, const Athlete* athlete,
                                                         const BodyRequest& request,
                                                         const Facility& facility) {
    std::vector<std::pair<Segment, Origin>> taped;
    for (const auto& each : taped_fields) {
        const auto typed = typed_length(each.name, request.*each.cm, request.*each.in, facility);
        if (!typed)
            return typed.refusal();
        if (typed->length)
            taped.push_back({each.segment, {typed->length->metres(), typed->field, "given", typed->unit}});
        else if (const auto* test = latest_result(view, athlete, each.test))
            taped.push_back(
                {each.segment, {test->value, typed->field, "taped " + test->date.text(), typed->unit}});
    }
    return taped;
}

Result<BodyTable> table_of(const BodyRequest& request) {
    if (!request.table)
        return BodyTable::de_leva;
    if (const auto table = from_word<BodyTable>(*request.table))
        return *table;
    return refuse_choice("table", *request.table, all_words<BodyTable>());
}

Result<Sex> sex_of(const BodyRequest& request, const Athlete* athlete) {
    if (request.sex) {
        if (const auto sex = from_word<Sex>(*request.sex))
            return *sex;
        return refuse_choice("sex", *request.sex, all_words<Sex>());
    }
    if (athlete)
        return athlete->sex;
    return refuse_missing("sex", "of the reference table: female or male, or give an athlete");
}

// Limits of body.h, checked here so that the refusal speaks the typed field and unit.
std::optional<Refusal> beyond_tables(const Origin& stature, const Origin& mass) {
    if (auto refused = outside_limits(stature.field, stature.si, 1.0, 2.4, stature.unit))
        return refused;
    return outside_limits(mass.field, mass.si, 15, 250, mass.unit);
}

std::optional<Refusal> beyond_scaled(const Body& scaled,
                                     const std::vector<std::pair<Segment, Origin>>& taped) {
    for (const auto& [segment, origin] : taped)
        for (const auto& part : scaled.parts)
            if (part.segment == segment)
                if (auto refused =
                        outside_limits(origin.field, origin.si, 0.6 * part.length.metres(),
                                       1.5 * part.length.metres(), origin.unit,
                                       "That is 0.6 to 1.5 times the length the table has for this "
                                       "standing height; it runs between joint centres, not over "
                                       "them."))
                    return refused;
    return std::nullopt;
}

std::vector<std::string> origins_of_parts(const Body& body,
                                          const std::vector<std::pair<Segment, Origin>>& taped) {
    const std::string source =
        body.given.table == BodyTable::de_leva ? "[DeLeva1996]" : "[DrillisContini1966]";
    std::vector<std::string> from;
    for (const auto& part : body.parts) {
        const auto found = std::find_if(taped.begin(), taped.end(),
                                        [&](const auto& each) { return part.segment == each.first; });
        from.push_back(found != taped.end()
                           ? found->second.from + ", error 0.5 cm"
                           : format_fixed(part.length / body.given.stature, 4) + " of stature " + source);
    }
    return from;
}

std::vector<std::string> cautions_of(const ReferenceTables& tables, const Athlete* athlete, Date today) {
    std::vector<std::string> cautions;
    if (!athlete)
        return cautions;
    if (whole_years(athlete->birth_date, today) < adult_years)
        cautions.push_back("The table was measured on adults; " + athlete->name + " is " +
                           std::to_string(whole_years(athlete->birth_date, today)) +
                           ", and a growing body is built otherwise: tape thigh, shank and trunk.");
    for (const auto& key : athlete->restrictions)
        if (const Caution* caution = tables.caution(key))
            cautions.push_back("Caution, " + caution->condition + ": " + caution->sentence);
    return cautions;
}

ShownBody shown_body(const Athlete* athlete, const Body& body, const Facility& facility,
                     const Origin& stature, const Origin& mass) {
    const auto length = shown_unit(TestUnit::metre, facility);
    const auto mass_unit = shown_mass(facility.mass_unit);
    return {athlete ? athlete->id.text : "",
            athlete ? athlete->name
                    : std::string(body.given.sex == Sex::male ? "A man" : "A woman") + " of that height",
            word(body.given.table),
            stature.si * length.factor,
            shown_load_in(body.given.mass, mass_unit),
            length.unit,
            mass_unit.unit,
            stature.from,
            mass.from};
}

} // namespace

const TestResult* latest_result(const FacilityView& view, const Athlete* athlete, const std::string& test) {
    if (!athlete)
        return nullptr;
    const auto found = view.series.find({athlete->id.text, test});
    if (found == view.series.end())
        return nullptr;
    const auto& results = found->second.results;
    const auto last =
        std::find_if(results.rbegin(), results.rend(), [](const auto& each) { return each.in_trajectory; });
    return last == results.rend() ? nullptr : &last->result;
}

std::string part_name(const BodyPart& part, BodyTable table) {
    if (!part.segment)
        return "head and neck";
    if (*part.segment == Segment::trunk && table == BodyTable::winter)
        return "trunk, head and neck";
    std::string name = word(*part.segment);
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

std::string ends_in_words(const BodyPart& part) {
    constexpr std::array<std::pair<const char*, const char*>, 14> words{{
        {"VERT-CERV", "crown of the head to the lowest neck vertebra"},
        {"MIDS-MIDH", "middle of the shoulder joints to middle of the hip joints"},
        {"SJC-EJC", "shoulder to elbow joint centre"},
        {"EJC-WJC", "elbow to wrist joint centre"},
        {"WJC-MET3", "wrist joint centre to third knuckle"},
        {"HJC-KJC", "hip to knee joint centre"},
        {"KJC-AJC", "knee to ankle joint centre"},
        {"HEEL-TTIP", "heel to tip of the toe"},
        {"WJC-KNU2", "wrist joint centre to second knuckle"},
        {"EJC-STYL", "elbow joint centre to wrist bone"},
        {"LMAL-MT2", "outer ankle bone to ball of the foot"},
        {"KJC-MMAL", "knee joint centre to inner ankle bone"},
        {"GTR-KJC", "greater trochanter to knee joint centre"},
        {"GTR-SJC", "greater trochanter to shoulder joint centre"},
    }};
    for (const auto& [ends, said] : words)
        if (part.ends == ends)
            return said;
    return part.ends;
}

Result<BodyGivenHere> body_given(const Workplace::Inside& inside, const FacilityView& view,
                                 const BodyRequest& request) {
    const Athlete* athlete = nullptr;
    if (request.athlete) {
        const auto named = athlete_named(view, *request.athlete);
        if (!named)
            return named.refusal();
        athlete = *named;
    }
    const auto facility = view.records.facility.value_or(Facility{"This facility"});
    const auto table = table_of(request);
    if (!table)
        return table.refusal();
    const auto sex = sex_of(request, athlete);
    if (!sex)
        return sex.refusal();
    const auto stature = stature_of(view, athlete, request, facility);
    if (!stature)
        return stature.refusal();
    const auto mass = mass_of(view, athlete, request, facility);
    if (!mass)
        return mass.refusal();
    const auto taped = taped_of(view, athlete, request, facility);
    if (!taped)
        return taped.refusal();
    if (auto refused = beyond_tables(*stature, *mass))
        return *refused;
    BodyGiven given{*table, *sex, Length::metres(stature->si), Mass::kilograms(mass->si)};
    auto body = scale_body(inside.tables.segments, given);
    if (!body)
        return body.refusal();
    if (auto refused = beyond_scaled(*body, *taped))
        return *refused;
    if (!taped->empty()) {
        for (const auto& [segment, origin] : *taped)
            given.taped.push_back({segment, Length::metres(origin.si)});
        body = scale_body(inside.tables.segments, given);
        if (!body)
            return body.refusal();
    }
    auto shown = shown_body(athlete, *body, facility, *stature, *mass);
    auto from = origins_of_parts(*body, *taped);
    std::vector<std::string> sources = *table == BodyTable::de_leva
                                           ? std::vector<std::string>{"DeLeva1996", "DrillisContini1966"}
                                           : std::vector<std::string>{"Winter2009", "DrillisContini1966"};
    return BodyGivenHere{athlete,           facility,
                         *std::move(body),  std::move(shown),
                         std::move(from),   cautions_of(inside.tables, athlete, inside.today()),
                         std::move(sources)};
}

} // namespace amentum
