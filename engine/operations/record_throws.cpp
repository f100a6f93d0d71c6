#include "operations/record_throws.h"

#include "operations/inside/given_throws.h"
#include "operations/inside/local_day.h"
#include "operations/inside/reopened_answers.h"
#include "operations/inside/said_by.h"
#include "operations/inside/throwing_answer.h"
#include "records/check_throws.h"

#include <algorithm>

namespace amentum {
namespace {

Result<Date> today_there(const Workplace::Inside& inside, const std::optional<std::string>& zone) {
    if (!zone || zone->empty())
        return inside.today();
    return local_day(*zone, inside.now());
}

// What a correction puts `entry` in the place of: the held one, or the word that the day was without throws, or, when the
// day is to be without, the only entry it has.
Result<ThrowEntry> corrected_entry(const std::vector<ThrowEntry>& all, const ThrowEntry& entry) {
    const auto there = of_day(all, entry);
    if (const auto* held = held_entry(there, entry))
        return *held;
    const bool none_either = entry.setting == ThrowSetting::none ||
                             (!there.empty() && there.front().setting == ThrowSetting::none);
    if (none_either && there.size() == 1)
        return there.front();
    return Refusal{RefusalCode::unknown_name,
                   there.empty()
                       ? "Nothing is held of that day that could be corrected."
                       : "There is no such entry on that day; it has " + std::to_string(there.size()) +
                             (there.size() == 1 ? " other." : " others."),
                   "setting", word(entry.setting), "the setting and occasion of a held entry"};
}

struct Keeping {
    std::optional<ThrowEntry> replaced; // by a correction
    ThrowEntry entry;
    bool held;
};

Result<Keeping> keeping_of(const RecordThrowsRequest& request, const std::vector<ThrowEntry>& all,
                           const ThrowEntry& entry) {
    if (request.corrected_by) {
        const auto replaced = corrected_entry(all, entry);
        if (!replaced)
            return replaced.refusal();
        if (*replaced == entry)
            return Refusal{RefusalCode::already_held, "This is what is held already; nothing was changed.",
                           "count", std::to_string(entry.count), "other numbers"};
        return Keeping{*replaced, entry, true};
    }
    if (const auto alone = check_day_of_throws(entry, of_day(all, entry)); !alone)
        return alone.refusal();
    const auto* held = held_entry(all, entry);
    if (!held)
        return Keeping{std::nullopt, entry, false};
    const ThrowEntry merged = with_later_soreness(*held, entry);
    if (!(with_later_soreness(entry, merged) == merged))
        return Refusal{
            RefusalCode::already_held,
            "Throws of that day, setting and occasion are already held: " + std::to_string(held->count) +
                " throws. Soreness that was not known yet can be added; other numbers are a "
                "correction, with corrected_by and reason, or a second occasion.",
            "date", entry.date.text(), "another day, setting or occasion, or the same numbers"};
    return Keeping{std::nullopt, merged, true};
}

std::optional<Refusal> refuse_correction(const RecordThrowsRequest& request) {
    if (!request.corrected_by && !request.reason)
        return std::nullopt;
    if (const auto person =
            person_given("corrected_by", request.corrected_by.value_or(""), "who corrects it");
        !person)
        return person.refusal();
    if (const auto reason = reason_given("reason", request.reason.value_or("")); !reason)
        return reason.refusal();
    return std::nullopt;
}

void keep(Store& store, const RecordThrowsRequest& request, const Keeping& keeping, Date today) {
    if (keeping.replaced)
        store.save_throw_correction(*keeping.replaced, keeping.entry, *request.corrected_by, *request.reason,
                                    today);
    else if (keeping.held)
        store.save_throw_entry(keeping.entry);
    else
        store.save_records(RecordSet{{}, {}, {}, {}, {keeping.entry}});
}

std::string kept_words(const Keeping& keeping) {
    if (keeping.replaced)
        return "Corrected. The entry before is kept with who changed it and why.";
    return keeping.held ? "These throws were already kept; soreness not known before is added." : "Kept.";
}

} // namespace

Result<RecordThrowsAnswer> record_throws(Workplace& workplace, const RecordThrowsRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto athlete = athlete_named(*before, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto today = today_there(inside, request.time_zone);
    if (!today)
        return today.refusal();
    const auto entry = throw_entry_from(request, (*athlete)->id, *today);
    if (!entry)
        return entry.refusal();
    if (const auto refusal = refuse_correction(request))
        return *refusal;
    const auto keeping = keeping_of(request, before->records.throws, *entry);
    if (!keeping)
        return keeping.refusal();
    keep(inside.store, request, *keeping, inside.today());

    const auto after = inside.view();
    const Athlete& thrower = *after->athlete(entry->athlete.text);
    RecordThrowsAnswer answer{};
    answer.held_before = keeping->held;
    answer.corrected = keeping->replaced.has_value();
    answer.reopened =
        reopened_answers(inside.tables, *before, *after, thrower.id, entry->date, inside.today());
    answer.findings = throwing_findings(inside, *after, thrower, inside.today());
    answer.words = {kept_words(*keeping), throwing_words(throws_of(*after, thrower, inside.today()))};
    if (!answer.reopened.empty())
        answer.words.push_back(reopened_words(answer.reopened));
    answer.stop_and_refer = stop_and_refer_words(inside.tables);
    return answer;
}

} // namespace amentum
