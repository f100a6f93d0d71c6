// Facility, kit, athletes, calendar, overrides: a line to a value and back.
#include "records/record_forms.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int youngest_years = 6, oldest_years = 80;

std::string number_cell(const std::optional<double>& x) { return x ? format_shortest(*x) : ""; }
std::string mass_cell(const std::optional<Mass>& m) { return m ? format_shortest(m->kilograms()) : ""; }
std::string length_cell(const std::optional<Length>& l) { return l ? format_shortest(l->metres()) : ""; }

std::string joined(const std::vector<std::string>& words, char separator) {
    std::string text;
    for (const auto& word : words) text += (text.empty() ? "" : std::string(1, separator)) + word;
    return text;
}

std::string name_of(const std::map<std::string, std::string>& names, const std::string& id) {
    const auto found = names.find(id);
    return found == names.end() ? id : found->second;
}

std::vector<std::string> all_names(const std::map<std::string, std::string>& names) {
    std::vector<std::string> all;
    for (const auto& [id, name] : names) all.push_back(name);
    return all;
}

Date birth_date(RowReader& row, Date today) {
    const Date birth = row.date("birth_date");
    const int years = whole_years(birth, today);
    if (birth > today)
        row.refuse({RefusalCode::impossible_date, "birth_date is " + birth.text() + ", in the future.", "birth_date", birth.text(),
                    "before " + today.text()});
    else if (years < youngest_years || years > oldest_years)
        row.refuse({RefusalCode::impossible_date, "birth_date is " + birth.text() + ", an age of " + std::to_string(years) +
                    " years; this tool is for ages 6 to 80.", "birth_date", birth.text(), "an age of 6 to 80 years"});
    return birth;
}

std::vector<std::string> restrictions(RowReader& row, const ReferenceTables& tables) {
    auto given = row.words("restrictions", ';');
    std::vector<std::string> known;
    for (const auto& caution : tables.cautions) known.push_back(caution.key);
    for (const auto& each : given)
        if (!tables.caution(each)) row.refuse(refuse_choice("restrictions", each, known));
    return given;
}

}  // namespace

NamesInUse::NamesInUse(const RecordSet& records) {
    for (const auto& athlete : records.athletes) athletes[athlete.id.text] = athlete.name;
    for (const auto& kit : records.kits) kits[kit.id.text] = kit.name;
}

Facility read_facility(RowReader& row) {
    Facility facility{row.needed_text("name", "the facility's name")};
    facility.mass_unit = row.choice<MassUnit>("mass_unit", MassUnit::lb);
    facility.speed_unit = row.choice<SpeedUnit>("speed_unit", SpeedUnit::mph);
    facility.length_unit = row.choice<LengthUnit>("length_unit", LengthUnit::inches);
    return facility;
}

Cells cells_of(const Facility& f, const NamesInUse&) {
    return {f.name, word(f.mass_unit), word(f.speed_unit), word(f.length_unit)};
}

KitLine read_kit_line(RowReader& row) {
    KitLine line{row.needed_text("kit", "the gym's name"), row.choice<MassUnit>("unit", MassUnit::lb),
                 {row.choice<ItemKind>("item"), row.needed_text("label", "what you call it"), 1, {}, {}, {}, {}, {}}};
    line.item.count = row.whole("count", 1, 500).value_or(1);
    line.item.mass = row.mass("mass", 0.01, 500);
    line.item.height = row.length("height", 0, 3);
    line.item.ratio = row.number("ratio", 0.1, 4);
    line.item.step = row.mass("step", 0.01, 50);
    line.item.most = row.mass("most", 0.1, 500);
    const auto needs_mass = {ItemKind::straight_bar, ItemKind::hex_bar, ItemKind::safety_bar, ItemKind::camber_bar, ItemKind::plate,
                             ItemKind::dumbbell, ItemKind::kettlebell, ItemKind::ball};
    if (!line.item.mass && std::find(needs_mass.begin(), needs_mass.end(), line.item.kind) != needs_mass.end())
        row.refuse(refuse_missing("mass_lb", "the mass of one " + word(line.item.kind) + ", weighed if you can, or mass_kg"));
    if (line.item.kind == ItemKind::column && (!line.item.step || !line.item.most || !line.item.ratio))
        row.refuse(refuse_missing("step_lb", "a column's step, most and ratio (0.5 when the handle carries half the stack)"));
    return line;
}

Cells cells_of(const KitLine& line, const NamesInUse&) {
    const auto& i = line.item;
    return {line.kit, i.label, word(line.unit), word(i.kind), std::to_string(i.count), mass_cell(i.mass), length_cell(i.height),
            number_cell(i.ratio), mass_cell(i.step), mass_cell(i.most)};
}

Athlete read_athlete(RowReader& row, const FormContext& context) {
    const std::string name = row.needed_text("name", "the thrower's name");
    if (slug(name).empty()) row.refuse(refuse_missing("name", "a name with letters in it"));
    const Date birth = birth_date(row, context.today);
    Athlete athlete{AthleteId{slug(name)}, name, birth, row.choice<Sex>("sex"), row.choice<Hand>("throwing_hand"),
                    row.choice<Sport>("sport"), row.choice<Role>("role"), row.choice<Level>("level"),
                    row.length("stature", 1.0, 2.4), row.length("sitting_height", 0.5, 1.3), row.number("training_years", 0, 40, "years"),
                    restrictions(row, context.tables), KitId{slug(row.needed_text("kit", "the gym where the thrower trains"))},
                    row.text("guardian")};
    if (!context.names.kits.contains(athlete.kit.text))
        row.refuse(refuse_unknown("kit", row.text("kit"), all_names(context.names.kits)));
    return athlete;
}

Cells cells_of(const Athlete& a, const NamesInUse& names) {
    return {a.name, a.birth_date.text(), word(a.sex), word(a.throwing_hand), word(a.sport), word(a.role), word(a.level),
            length_cell(a.stature), length_cell(a.sitting_height), number_cell(a.training_years), joined(a.restrictions, ';'),
            name_of(names.kits, a.kit.text), a.guardian};
}

CalendarEntry read_calendar(RowReader& row, const FormContext& context) {
    const std::string name = row.needed_text("athlete", "the thrower's name");
    if (!name.empty() && !context.names.athletes.contains(slug(name)))
        row.refuse(refuse_unknown("athlete", name, all_names(context.names.athletes)));
    const Date date = row.date("date");
    const Date last = row.date("last_date", date);
    if (last < date || last - date > 366)
        row.refuse({RefusalCode::impossible_date, "last_date is " + last.text() + ", but must be " + date.text() +
                    " or at most a year later.", "last_date", last.text(), date.text() + " to " + (date + 366).text()});
    return {AthleteId{slug(name)}, date, last, row.choice<DayKind>("kind"), row.text("note")};
}

Cells cells_of(const CalendarEntry& e, const NamesInUse& names) {
    return {name_of(names.athletes, e.athlete.text), e.date.text(), word(e.kind), e.last_date.text(), e.note};
}

Override read_override(RowReader& row, const FormContext& context) {
    const std::string name = row.needed_text("athlete", "the thrower's name");
    if (!name.empty() && !context.names.athletes.contains(slug(name)))
        row.refuse(refuse_unknown("athlete", name, all_names(context.names.athletes)));
    Override o{AthleteId{slug(name)}, row.needed_text("exercise", "the exercise's key"), row.needed_text("caution", "the caution's key"),
               row.needed_text("reason", "why, at least 10 characters"), row.needed_text("coach", "who decided"), row.date("date")};
    if (!context.tables.exercise(o.exercise)) row.refuse(refuse_unknown("exercise", o.exercise, {}));
    if (!context.tables.caution(o.caution)) row.refuse(refuse_unknown("caution", o.caution, {}));
    if (o.reason.size() < 10)
        row.refuse({RefusalCode::caution_needs_reason, "reason must say why, in at least 10 characters.", "reason", o.reason,
                    "at least 10 characters"});
    return o;
}

Cells cells_of(const Override& o, const NamesInUse& names) {
    return {name_of(names.athletes, o.athlete.text), o.exercise, o.caution, o.date.text(), o.coach, o.reason};
}

}  // namespace amentum
