#include "operations/record_pain.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "operations/inside/said_by.h"
#include "operations/inside/shown_pains.h"
#include "operations/inside/throwing_answer.h"

namespace amentum {
namespace {

constexpr std::size_t longest_words = 1000;

Result<const StopSign*> sign_given(const ReferenceTables& tables, const std::optional<std::string>& key) {
    if (!key || key->empty())
        return nullptr;
    std::vector<std::string> known;
    for (const auto& sign : tables.stop_signs) {
        if (sign.key == *key)
            return &sign;
        known.push_back(sign.key);
    }
    return refuse_unknown("sign", *key, known);
}

Result<std::string> pain_words(const std::string& given) {
    const std::string words = trimmed(given);
    if (words.empty())
        return refuse_missing("words", "where it hurts and when, as the thrower says it");
    if (words.size() > longest_words)
        return Refusal{RefusalCode::out_of_range, "Please keep it shorter.", "words",
                       std::to_string(words.size()) + " characters", "1 to 1000 characters"};
    return words;
}

int next_number(const FacilityView& view, const AthleteId& athlete) {
    int last = 0;
    for (const auto& pain : view.records.pains)
        if (pain.athlete == athlete)
            last = std::max(last, pain.number);
    return last + 1;
}

Result<PainEntry> pain_from(const Workplace::Inside& inside, const FacilityView& view,
                            const RecordPainRequest& request, const Athlete& athlete) {
    const auto region = from_word<PainRegion>(request.region);
    if (!region)
        return refuse_choice("region", request.region, all_words<PainRegion>());
    const auto date = day_up_to_today(request.date.value_or(inside.today().text()), "pain", inside.today());
    if (!date)
        return date.refusal();
    const auto sign = sign_given(inside.tables, request.sign);
    if (!sign)
        return sign.refusal();
    const auto words = pain_words(request.words);
    if (!words)
        return words.refusal();
    const auto noted_by = person_given("noted_by", request.noted_by, "who writes this down");
    if (!noted_by)
        return noted_by.refusal();
    return PainEntry{athlete.id, next_number(view, athlete.id), *date,
                     *region,    *sign ? (*sign)->key : "",     *words,
                     *noted_by};
}

// The open entry these very words are held as; none: they are new. Once it is cleared, the same words are pain that came back.
std::optional<PainEntry> held_pain(const FacilityView& view, const PainEntry& pain, Date today) {
    for (const auto& held : open_pains_of(view, pain.athlete, today))
        if (held.date == pain.date && held.region == pain.region && held.sign == pain.sign &&
            held.words == pain.words && held.noted_by == pain.noted_by)
            return held;
    return std::nullopt;
}

bool minor(const Athlete& athlete, Date today) {
    return whole_years(athlete.birth_date, today) < 18;
}

} // namespace

Result<RecordPainAnswer> record_pain(Workplace& workplace, const RecordPainRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto athlete = athlete_named(*before, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto pain = pain_from(inside, *before, request, **athlete);
    if (!pain)
        return pain.refusal();
    const auto held = held_pain(*before, *pain, inside.today());
    const int number = held ? held->number : pain->number;
    RecordSet more;
    if (!held)
        more.pains = {*pain};
    inside.store.save_records(more);
    const auto view = inside.view();
    RecordPainAnswer answer{};
    answer.held_before = held.has_value();
    for (const auto& shown : shown_pains(inside.tables, *view, pain->athlete, inside.today()))
        if (shown.number == number)
            answer.pain = shown;
    answer.words = {std::string(held ? "Held already" : "Kept") + ", as entry " + std::to_string(number) +
                        " of " + (*athlete)->name + "; it cannot be changed or deleted, only added to.",
                    pain_stops_words(inside.tables, **athlete, pain->region),
                    answer.pain.sign.empty()
                        ? "If any of the signs below is there: stop, and to a qualified clinician."
                        : "This is a sign to stop and to see a qualified clinician: " + answer.pain.sign};
    if (minor(**athlete, inside.today()))
        answer.words.push_back((*athlete)->guardian.empty()
                                   ? "Tell the guardian; none is written down for " + (*athlete)->name + "."
                                   : "Tell " + (*athlete)->guardian + ".");
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
