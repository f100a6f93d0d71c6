#include "operations/inside/trace_files.h"

#include "operations/described_json.h"
#include "operations/json_text.h"
#include "operations/shown_trace.h"
#include "records/csv.h"
#include "values/shortest_decimal.h"

#include <array>
#include <charconv>

namespace amentum {
namespace {

void append(std::string& text, float x) {
    std::array<char, 48> digits;
    const auto end =
        std::to_chars(digits.data(), digits.data() + digits.size(), x, std::chars_format::fixed).ptr;
    text.append(digits.data(), end);
}

std::string moves_text(const std::vector<EventMove>& moves) {
    std::vector<MoveGiven> given;
    for (const auto& move : moves)
        given.push_back({move.event, move.seconds, move.reason});
    return given.empty() ? "" : json_text(written(given));
}

// What a file of ours calls a plate: without what would end its cell.
std::string column_name(const PlateForces& plate, const char* which) {
    std::string name = word(plate.side) == "none" ? "plate" : word(plate.side);
    return name + " " + which + " [N]";
}

} // namespace

ExportedFile index_of_traces(const std::vector<KeptTrace>& traces) {
    const std::vector<std::string> header{"file_name", "key",   "athlete",      "date",          "effort",
                                          "legs",      "trial", "body_mass_kg", "box_height_cm", "device",
                                          "note",      "moves", "came_from"};
    std::string text = write_csv_line(header);
    for (const auto& t : traces)
        text += write_csv_line(std::vector<std::string>{
            "force_trace_" + t.id + ".csv", t.id, t.athlete.text, t.date.text(), t.effort, t.legs,
            std::to_string(t.trial), t.body_mass ? format_shortest(t.body_mass->kilograms()) : "",
            t.box_height ? format_shortest(t.box_height->centimetres()) : "", t.device, t.note,
            moves_text(t.moves), t.file_name});
    return {"force_traces.csv", "force_traces", std::move(text)};
}

ExportedFile samples_of_trace(const KeptTrace& trace) {
    const auto& recording = trace.recording;
    std::string text = "rate: " + format_shortest(recording.rate_hz) + " Hz\n";
    std::string names;
    for (const auto& plate : recording.plates) {
        names += (names.empty() ? "" : ";") + column_name(plate, "vertical");
        if (!plate.lateral.empty())
            names += ";" + column_name(plate, "lateral");
    }
    text += names + "\n";
    for (std::size_t i = 0; i < recording.samples(); ++i) {
        bool first = true;
        for (const auto& plate : recording.plates) {
            if (!std::exchange(first, false))
                text += ';';
            append(text, plate.vertical[i]);
            if (!plate.lateral.empty()) {
                text += ';';
                append(text, plate.lateral[i]);
            }
        }
        text += '\n';
    }
    return {"force_trace_" + trace.id + ".csv", "force_trace", std::move(text)};
}

} // namespace amentum
