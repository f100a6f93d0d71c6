// Which columns each kind of file has.
#include "records/record_forms.h"

#include <cassert>

namespace amentum {
namespace {

struct Column {
    const char* name;       // without unit when it is a quantity
    const char* dimension;  // "" for anything but a quantity
    bool needed;
};

const std::vector<Column>& columns_of(RecordKind kind) {
    static const std::map<RecordKind, std::vector<Column>> all{
        {RecordKind::facility, {{"name", "", true}, {"mass_unit", "", false}, {"speed_unit", "", false}, {"length_unit", "", false}}},
        {RecordKind::kit,
         {{"kit", "", true}, {"label", "", true}, {"unit", "", false}, {"item", "", true}, {"count", "", false}, {"mass", "mass", false},
          {"height", "length", false}, {"ratio", "", false}, {"step", "mass", false}, {"most", "mass", false}}},
        {RecordKind::athletes,
         {{"name", "", true}, {"birth_date", "", true}, {"sex", "", true}, {"throwing_hand", "", true}, {"sport", "", true},
          {"role", "", true}, {"level", "", true}, {"stature", "length", false}, {"sitting_height", "length", false},
          {"training_years", "", false}, {"restrictions", "", false}, {"kit", "", true}, {"guardian", "", false}}},
        {RecordKind::test_results,
         {{"athlete", "", true}, {"date", "", true}, {"test", "", true}, {"side", "", false}, {"trial", "", false}, {"load", "mass", false},
          {"reps", "", false}, {"reps_in_reserve", "", false}, {"body_mass", "mass", false}, {"speed", "speed", false},
          {"radar_angle", "angle", false}, {"distance", "length", false}, {"release_height", "length", false},
          {"release_angle", "angle", false}, {"flight_time", "duration", false}, {"height", "length", false}, {"angle", "angle", false},
          {"force", "force", false}, {"device", "", false}, {"rater", "", false}, {"place_measured", "", false}, {"note", "", false}}},
        {RecordKind::throws,
         {{"athlete", "", true}, {"date", "", true}, {"setting", "", true}, {"count", "", true}, {"effort", "", false},
          {"speed", "speed", false}, {"distance", "length", false}, {"ball_mass", "mass", false}, {"soreness_before", "", false},
          {"soreness_after", "", false}, {"soreness_next_day", "", false}, {"note", "", false}}},
        {RecordKind::calendar,
         {{"athlete", "", true}, {"date", "", true}, {"kind", "", true}, {"last_date", "", false}, {"note", "", false}}},
        {RecordKind::blocks,
         {{"block", "", true}, {"athlete", "", true}, {"kit", "", true}, {"start", "", true}, {"weeks", "", true},
          {"sessions_per_week", "", true}, {"minutes", "", true}, {"notes", "", false}, {"model", "", false}}},
        {RecordKind::block_lines,
         {{"block", "", true}, {"week", "", true}, {"session", "", true}, {"order", "", true}, {"date", "", true}, {"exercise", "", true},
          {"part", "", true}, {"sets", "", true}, {"reps", "", true}, {"intensity", "", false}, {"reps_in_reserve", "", false},
          {"load", "mass", false}, {"load_words", "", false}, {"rest_minutes", "", true}, {"purpose", "", true}, {"reason", "", true},
          {"overridden", "", false}}},
        {RecordKind::sets,
         {{"key", "", true}, {"athlete", "", true}, {"date", "", true}, {"exercise", "", true}, {"set_number", "", true},
          {"load", "mass", false}, {"reps", "", false}, {"reps_in_reserve", "", false}, {"speed", "speed", false}, {"block", "", false},
          {"note", "", false}}},
        {RecordKind::overrides,
         {{"athlete", "", true}, {"exercise", "", true}, {"caution", "", true}, {"date", "", true}, {"coach", "", true}, {"reason", "", true}}}};
    return all.at(kind);
}

}  // namespace

std::vector<std::string> written_columns(RecordKind kind) {
    std::vector<std::string> names;
    for (const auto& column : columns_of(kind))
        names.push_back(*column.dimension ? columns_of_quantity(column.name, column.dimension).front() : column.name);
    return names;
}

std::vector<std::string> readable_columns(RecordKind kind) {
    std::vector<std::string> names;
    for (const auto& column : columns_of(kind)) {
        if (!*column.dimension) names.push_back(column.name);
        else
            for (auto& name : columns_of_quantity(column.name, column.dimension)) names.push_back(std::move(name));
    }
    if (kind == RecordKind::throws) names.push_back("effort_percent");
    return names;
}

std::vector<std::string> needed_columns(RecordKind kind) {
    std::vector<std::string> names;
    for (const auto& column : columns_of(kind))
        if (column.needed) names.push_back(column.name);
    return names;
}

std::size_t key_cells(RecordKind kind) {
    switch (kind) {
    case RecordKind::facility: return 0;  // there is one
    case RecordKind::kit: return 2;
    case RecordKind::athletes: return 1;
    case RecordKind::test_results: return 5;
    case RecordKind::throws: return 3;
    case RecordKind::calendar: return 3;
    case RecordKind::blocks: return 1;
    case RecordKind::block_lines: return 4;
    case RecordKind::sets: return 1;
    case RecordKind::overrides: return 4;
    }
    assert(!"every kind has a key");
    return 0;
}

std::string noun_of(RecordKind kind) {
    static const std::map<RecordKind, std::string> nouns{
        {RecordKind::facility, "the facility"}, {RecordKind::kit, "an item"},       {RecordKind::athletes, "an athlete"},
        {RecordKind::test_results, "a reading"}, {RecordKind::throws, "throws"},    {RecordKind::calendar, "a day"},
        {RecordKind::blocks, "a block"},        {RecordKind::block_lines, "a line of a block"}, {RecordKind::sets, "a set"},
        {RecordKind::overrides, "an override"}};
    return nouns.at(kind);
}

}  // namespace amentum
