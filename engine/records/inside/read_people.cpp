// Facility, kit and athletes: who trains, and with what.
#include "records/inside/read_line.h"

#include <algorithm>
#include <cctype>

namespace amentum {
namespace {

std::string needed_name(LineReader& reader, const char* column) {
    std::string name = reader.one_line(column);
    if (name.empty())
        reader.needed(column);
    else if (slug(name).empty())
        reader.refuse({RefusalCode::wrong_type, "\"" + name + "\" has no letter or digit to know it by.",
                       column, name, "a name with letters or digits"});
    return name;
}

MassUnit unit_of_file(const FileLayout& layout, MassUnit otherwise) {
    for (const auto& each : layout.columns)
        if (each.column->name == "mass")
            return std::string(each.unit->suffix).ends_with("g") ? MassUnit::kg : MassUnit::lb;
    return otherwise;
}

// The kit's unit: as said, as the lines before said, as held, as the masses are given, as the facility speaks.
MassUnit read_kit_unit(LineReader& reader, LinesBefore& before, const std::string& kit) {
    const auto said = reader.choice<MassUnit>("unit");
    std::optional<MassUnit> known;
    for (const auto& held : before.context.held.kits)
        if (held.id.text == kit)
            known = held.unit;
    if (before.units.contains(kit))
        known = before.units.at(kit);
    if (said && before.units.contains(kit) && *said != *known)
        reader.refuse({RefusalCode::already_held, "The lines above give this kit in " + word(*known) + ".",
                       "unit", word(*said), "one unit for a kit"});
    const auto& facility = before.context.held.facility;
    const MassUnit usual = unit_of_file(before.layout, facility ? facility->mass_unit : MassUnit::lb);
    return before.units[kit] = said.value_or(known.value_or(usual));
}

std::string label_made(const LineReader& reader, ItemKind kind) {
    std::string name = word(kind);
    std::replace(name.begin(), name.end(), '_', ' ');
    const std::string mass = reader.said("mass");
    return mass.empty() ? name : mass + " " + name;
}

bool needs_mass(ItemKind kind) {
    switch (kind) {
    case ItemKind::straight_bar:
    case ItemKind::hex_bar:
    case ItemKind::safety_bar:
    case ItemKind::camber_bar:
    case ItemKind::plate:
    case ItemKind::dumbbell:
    case ItemKind::kettlebell:
    case ItemKind::ball:
        return true;
    default:
        return false;
    }
}

std::optional<KitItem> read_item_itself(LineReader& reader) {
    const auto kind = reader.choice<ItemKind>("item");
    if (!kind) {
        if (!reader.tidy("label").empty() || !reader.tidy("mass").empty())
            reader.needed("item");
        return std::nullopt;
    }
    KitItem item{*kind,
                 reader.one_line("label"),
                 reader.whole("count", limits::item_count).value_or(1),
                 {},
                 {},
                 {},
                 {},
                 {}};
    item.mass = reader.mass("mass", limits::item_mass_kg);
    item.height = reader.length("height", limits::item_height_m);
    item.ratio = reader.number("ratio", limits::item_ratio);
    item.step = reader.mass("step", limits::item_step_kg);
    item.most = reader.mass("most", limits::item_most_kg);
    if (needs_mass(*kind) && !item.mass)
        reader.refuse(refuse_missing(reader.file_name_of("mass"), "what one of them weighs"));
    if (*kind == ItemKind::column && !item.step)
        reader.refuse(refuse_missing(reader.file_name_of("step"), "the stack's step"));
    if (*kind == ItemKind::column && !item.most)
        reader.refuse(refuse_missing(reader.file_name_of("most"), "the whole stack"));
    if (item.label.empty())
        item.label = label_made(reader, *kind);
    return item;
}

void check_birth_date(LineReader& reader, Date birth, Date today) {
    if (birth > today)
        reader.refuse({RefusalCode::impossible_date, "The birth date " + birth.text() + " is in the future.",
                       "birth_date", birth.text(), "before " + today.text()});
    const int age = whole_years(birth, today);
    if (age < limits::age_years.low || age > limits::age_years.high)
        reader.refuse({RefusalCode::impossible_date,
                       "Born " + birth.text() + ", the athlete is " + std::to_string(age) +
                           " years old; ages 6 to 80 are taken.",
                       "birth_date", birth.text(), "ages 6 to 80"});
}

// Its characters only; whether there is such a zone is asked where a day is made of it.
std::string read_time_zone(LineReader& reader) {
    std::string zone = reader.tidy("time_zone");
    const bool fit =
        zone.size() <= limits::time_zone_characters && std::all_of(zone.begin(), zone.end(), [](char c) {
            return std::string_view("_/+-").find(c) != std::string_view::npos ||
                   (static_cast<unsigned char>(c) < 128 && std::isalnum(static_cast<unsigned char>(c)));
        });
    if (!fit)
        reader.refuse({RefusalCode::wrong_type, "\"" + zone + "\" is not the name of a time zone.",
                       "time_zone", zone, "a name such as America/Halifax; or empty"});
    return zone;
}

} // namespace

RecordOnLine read_facility(LineReader& reader, LinesBefore&) {
    Facility facility{needed_name(reader, "name")};
    facility.mass_unit = reader.choice<MassUnit>("mass_unit").value_or(facility.mass_unit);
    facility.speed_unit = reader.choice<SpeedUnit>("speed_unit").value_or(facility.speed_unit);
    facility.length_unit = reader.choice<LengthUnit>("length_unit").value_or(facility.length_unit);
    facility.time_zone = read_time_zone(reader);
    return facility;
}

RecordOnLine read_item(LineReader& reader, LinesBefore& before) {
    const std::string name = needed_name(reader, "kit"), id = slug(name);
    const bool held = before.names.kits.contains(id);
    const MassUnit unit = read_kit_unit(reader, before, id);
    return ItemOfKit{{id}, held ? before.names.kits.at(id) : name, unit, read_item_itself(reader)};
}

RecordOnLine read_athlete(LineReader& reader, LinesBefore& before) {
    const std::string name = needed_name(reader, "name");
    const Date birth = reader.needed_date("birth_date");
    if (!reader.refusal())
        check_birth_date(reader, birth, before.context.today);
    Athlete athlete{{slug(name)},
                    name,
                    birth,
                    reader.needed_choice<Sex>("sex"),
                    reader.needed_choice<Hand>("throwing_hand"),
                    reader.needed_choice<Sport>("sport"),
                    reader.needed_choice<Role>("role"),
                    reader.needed_choice<Level>("level"),
                    reader.length("stature", limits::stature_m),
                    reader.length("sitting_height", limits::sitting_height_m),
                    reader.number("training_years", limits::training_years),
                    read_cautions(reader, before, "restrictions"),
                    read_kit_name(reader, before),
                    reader.tidy("guardian")};
    return athlete;
}

} // namespace amentum
