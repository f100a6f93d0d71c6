#include "store/sqlite/rows.h"

#include "store/sqlite/new_rows.h"
#include "store/sqlite/optional_quantities.h"

#include <algorithm>

namespace amentum {
namespace {

std::vector<KitItem> items_of(SQLite::Database& database, const KitId& kit) {
    Statement query(database,
                    "SELECT kind, label, count, mass_kg, height_m, ratio, step_kg, most_kg FROM kit_item "
                    "WHERE facility_id = $1 AND kit_id = $2 ORDER BY place");
    query.bind(this_facility, kit.text);
    std::vector<KitItem> items;
    while (query.step()) {
        query.begin_row();
        const auto kind = query.choice<ItemKind>();
        std::string label = query.text();
        const int count = query.whole();
        const auto m = mass_of(query.maybe_number());
        const auto h = length_of(query.maybe_number());
        const auto ratio = query.maybe_number();
        const auto step = mass_of(query.maybe_number());
        items.push_back({kind, std::move(label), count, m, h, ratio, step, mass_of(query.maybe_number())});
    }
    return items;
}

// Where an item stands in its kit's list: where it stood, or after all others.
int place_of(SQLite::Database& database, const KitId& kit, const std::string& label) {
    Statement query(
        database,
        "SELECT coalesce((SELECT place FROM kit_item WHERE facility_id = $1 AND kit_id = $2 AND label = $3), "
        "(SELECT max(place) + 1 FROM kit_item WHERE facility_id = $1 AND kit_id = $2), 0)");
    query.bind(this_facility, kit.text, label).step();
    query.begin_row();
    return query.whole();
}

} // namespace

std::string joined_lines(const std::vector<std::string>& lines) {
    std::string text;
    for (std::string line : lines) {
        std::replace_if(
            line.begin(), line.end(), [](char c) { return c == '\n' || c == '\r'; }, ' ');
        if (!line.empty())
            text += line + "\n";
    }
    return text;
}

std::vector<std::string> split_lines(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t to = text.find('\n', from);
        lines.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    return lines;
}

void save_facility(SQLite::Database& database, const Facility& facility) {
    NewRows(database, "facility", "facility_id, name, mass_unit, speed_unit, length_unit, time_zone")
        .save(this_facility, facility.name, word(facility.mass_unit), word(facility.speed_unit),
              word(facility.length_unit), facility.time_zone);
}

std::optional<Facility> load_facility(SQLite::Database& database) {
    Statement query(
        database,
        "SELECT name, mass_unit, speed_unit, length_unit, time_zone FROM facility WHERE facility_id = $1");
    query.bind(this_facility);
    if (!query.step())
        return std::nullopt;
    query.begin_row();
    Facility facility{query.text()};
    facility.mass_unit = query.choice<MassUnit>();
    facility.speed_unit = query.choice<SpeedUnit>();
    facility.length_unit = query.choice<LengthUnit>();
    facility.time_zone = query.text();
    return facility;
}

void save_kits(SQLite::Database& database, const std::vector<Kit>& kits) {
    NewRows kit_row(database, "kit", "facility_id, kit_id, name, unit");
    NewRows item_row(
        database, "kit_item",
        "facility_id, kit_id, label, place, kind, count, mass_kg, height_m, ratio, step_kg, most_kg");
    for (const auto& kit : kits) {
        kit_row.save(this_facility, kit.id.text, kit.name, word(kit.unit));
        for (const auto& item : kit.items)
            item_row.save(this_facility, kit.id.text, item.label, place_of(database, kit.id, item.label),
                          word(item.kind), item.count, kilograms(item.mass), metres(item.height), item.ratio,
                          kilograms(item.step), kilograms(item.most));
    }
}

std::vector<Kit> load_kits(SQLite::Database& database) {
    Statement query(database, "SELECT kit_id, name, unit FROM kit WHERE facility_id = $1 ORDER BY kit_id");
    query.bind(this_facility);
    std::vector<Kit> kits;
    while (query.step()) {
        query.begin_row();
        KitId id{query.text()};
        std::string name = query.text();
        kits.push_back({id, std::move(name), query.choice<MassUnit>(), items_of(database, id)});
    }
    return kits;
}

void save_athletes(SQLite::Database& database, const std::vector<Athlete>& athletes) {
    NewRows row(database, "athlete",
                "facility_id, athlete_id, name, birth_date, sex, throwing_hand, sport, role, level, "
                "stature_m, sitting_height_m, training_years, restrictions, kit_id, guardian");
    for (const auto& a : athletes)
        row.save(this_facility, a.id.text, a.name, a.birth_date, word(a.sex), word(a.throwing_hand),
                 word(a.sport), word(a.role), word(a.level), metres(a.stature), metres(a.sitting_height),
                 a.training_years, joined_lines(a.restrictions), a.kit.text, a.guardian);
}

std::vector<Athlete> load_athletes(SQLite::Database& database) {
    Statement query(database,
                    "SELECT athlete_id, name, birth_date, sex, throwing_hand, sport, role, level, stature_m, "
                    "sitting_height_m, training_years, restrictions, kit_id, guardian FROM athlete "
                    "WHERE facility_id = $1 ORDER BY athlete_id");
    query.bind(this_facility);
    std::vector<Athlete> athletes;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        std::string name = query.text();
        const Date birth = query.date();
        const auto sex = query.choice<Sex>();
        const auto hand = query.choice<Hand>();
        const auto sport = query.choice<Sport>();
        const auto role = query.choice<Role>();
        const auto level = query.choice<Level>();
        const auto stature = length_of(query.maybe_number());
        const auto sitting = length_of(query.maybe_number());
        const auto years = query.maybe_number();
        auto restrictions = split_lines(query.text());
        KitId kit{query.text()};
        athletes.push_back({id, std::move(name), birth, sex, hand, sport, role, level, stature, sitting,
                            years, std::move(restrictions), kit, query.text()});
    }
    return athletes;
}

void save_calendar(SQLite::Database& database, const std::vector<CalendarEntry>& entries) {
    NewRows row(database, "calendar_entry", "facility_id, athlete_id, date, kind, last_date, note");
    for (const auto& e : entries)
        row.save(this_facility, e.athlete.text, e.date, word(e.kind), e.last_date, e.note);
}

std::vector<CalendarEntry> load_calendar(SQLite::Database& database) {
    Statement query(
        database, "SELECT athlete_id, date, last_date, kind, note FROM calendar_entry WHERE facility_id = $1 "
                  "ORDER BY athlete_id, date, kind");
    query.bind(this_facility);
    std::vector<CalendarEntry> entries;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        const Date date = query.date(), last = query.date();
        const auto kind = query.choice<DayKind>();
        entries.push_back({id, date, last, kind, query.text()});
    }
    return entries;
}

void save_overrides(SQLite::Database& database, const std::vector<Override>& overrides) {
    NewRows row(database, "caution_override",
                "facility_id, athlete_id, exercise, caution, date, coach, reason");
    for (const auto& o : overrides)
        row.save(this_facility, o.athlete.text, o.exercise, o.caution, o.date, o.coach, o.reason);
}

std::vector<Override> load_overrides(SQLite::Database& database) {
    Statement query(database,
                    "SELECT athlete_id, exercise, caution, reason, coach, date FROM caution_override "
                    "WHERE facility_id = $1 ORDER BY athlete_id, exercise, caution, date, coach, reason");
    query.bind(this_facility);
    std::vector<Override> overrides;
    while (query.step()) {
        query.begin_row();
        AthleteId id{query.text()};
        std::string exercise = query.text(), caution = query.text(), reason = query.text(),
                    coach = query.text();
        overrides.push_back({id, exercise, caution, reason, coach, query.date()});
    }
    return overrides;
}

} // namespace amentum
