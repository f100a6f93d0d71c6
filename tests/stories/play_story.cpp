#include "story.h"

#include "operations/json_text.h"
#include "operations/operation.h"
#include "values/shortest_decimal.h"

#include <boost/json.hpp>

#include <optional>
#include <set>

namespace stories {
namespace {

using namespace amentum;
using boost::json::value;

struct Play {
    std::optional<Date> today = Date::from(std::chrono::year(2026) / 6 / 1);
    std::unique_ptr<Workplace> workplace;
    value answer;
    bool was_refused = false;
    std::set<std::string> files; // that may be read
    std::vector<std::string> faults;

    Workplace& open() {
        if (!workplace)
            workplace = std::make_unique<Workplace>(Workplace::Opening{":memory:", today});
        return *workplace;
    }
};

const value* at_path(const value& document, const std::string& path) {
    const value* here = &document;
    for (std::size_t from = 0; from <= path.size();) {
        const auto to = std::min(path.find('.', from), path.size());
        const std::string step = path.substr(from, to - from);
        if (here->is_object())
            here = here->get_object().if_contains(step);
        else if (here->is_array() && step.find_first_not_of("0123456789") == std::string::npos)
            here = here->get_array().if_contains(std::stoul(step));
        else
            return nullptr;
        if (!here)
            return nullptr;
        from = to + 1;
    }
    return here;
}

std::string plain(const value& any) {
    return any.is_string() ? std::string(any.get_string()) : json_text(any);
}

bool holds(const value& found, const std::string& relation, const std::string& wanted) {
    if (relation == "is")
        return plain(found) == wanted;
    if (relation == "contains" || relation == "lacks")
        return (plain(found).find(wanted) != std::string::npos) == (relation == "contains");
    if (relation == "has")
        return found.is_array() && std::to_string(found.get_array().size()) == wanted;
    const auto middle = wanted.find(" and ");
    if (relation != "between" || middle == std::string::npos || !found.is_number())
        return false;
    const auto low = parse_number(wanted.substr(0, middle)), high = parse_number(wanted.substr(middle + 5));
    const double x = found.to_number<double>();
    return low && high && *low <= x && x <= *high;
}

void expect(Play& play, const Step& step) {
    const std::string where = "line " + std::to_string(step.line) + ": ";
    const bool wants_refusal = step.words == "Then it is refused";
    if (wants_refusal != play.was_refused) {
        play.faults.push_back(where + (play.was_refused
                                           ? "refused: " + plain(play.answer.at("refusal").at("sentence"))
                                           : "not refused"));
        return;
    }
    const value& document = wants_refusal ? play.answer.at("refusal") : play.answer;
    for (const auto& row : step.table) {
        const value* found = at_path(document, row.at(0));
        if (!found)
            play.faults.push_back(where + "the answer has no " + row.at(0));
        else if (!holds(*found, row.at(1), row.at(2)))
            play.faults.push_back(where + row.at(0) + " " + row.at(1) + " " + row.at(2) + ", but it is " +
                                  plain(*found));
    }
}

value cell_value(const std::string& text, const std::string& type) {
    if (text.starts_with("[") || text.starts_with("{"))
        return boost::json::parse(text);
    if (type == "number" || type == "integer")
        return parse_number(text).value();
    if (type == "boolean")
        return text == "yes";
    return value(text);
}

void ask(Play& play, const std::string& name, const boost::json::object& request) {
    const Operation* operation = find_operation(name);
    if (!operation)
        throw std::runtime_error("there is no operation " + name);
    const auto answer = operation->run(play.open(), request);
    play.was_refused = !answer;
    play.answer = answer ? *answer : refusal_document(answer.refusal());
}

std::string in_repository(const std::string& path) {
    return AMENTUM_SOURCE_DIR "/" + path;
}

void put_file(Play& play, const std::string& path) {
    play.files.insert(path);
    play.open().put_on_table(in_repository(path));
}

void ask_step(Play& play, const Step& step) {
    const std::string name = step.words.substr(std::string("When the coach asks ").size());
    boost::json::object request;
    for (const auto& row : step.table) {
        std::string type = "string";
        if (const Operation* operation = find_operation(name))
            for (const auto& field : operation->fields)
                if (field.name == row.at(0))
                    type = field.type;
        const bool is_file = row.at(0) == "file_name" && play.files.contains(row.at(1));
        request[row.at(0)] = is_file ? value(in_repository(row.at(1))) : cell_value(row.at(1), type);
    }
    ask(play, name, request);
}

std::string as_csv(const std::vector<std::vector<std::string>>& table) {
    std::string text;
    for (const auto& row : table) {
        for (std::size_t i = 0; i < row.size(); ++i)
            text += (i ? "," : "") + std::string("\"") + row[i] + "\"";
        text += "\n";
    }
    return text;
}

void bring_records(Play& play, const Step& step, const std::string& words, bool take) {
    const std::string kind = step.words.substr(words.size());
    ask(play, "import_records", {{"kind", kind}, {"text", as_csv(step.table)}, {"take", take}});
}

// "When the coach asks import_block for Ona Reyes", "... for Ona Reyes and keeps it": the table is the file.
void bring_block(Play& play, const Step& step, const std::string& words) {
    const std::string keeps = " and keeps it";
    std::string name = step.words.substr(words.size());
    const bool keep = name.ends_with(keeps);
    if (keep)
        name.erase(name.size() - keeps.size());
    ask(play, "import_block", {{"athlete", name}, {"text", as_csv(step.table)}, {"keep", keep}});
}

void take_records(Play& play, const Step& step) {
    bring_records(play, step, "Given the records ", true);
    if (!play.was_refused && play.answer.at("taken").as_bool())
        return;
    std::string why = json_text(play.answer);
    if (!play.was_refused)
        for (const auto& line : play.answer.at("lines").as_array())
            if (line.at("refusal").is_object())
                why = plain(line.at("refusal").at("sentence"));
    play.faults.push_back("line " + std::to_string(step.line) + ": the records were not taken: " + why);
}

} // namespace

std::vector<std::string> play_story(const Story& story) {
    Play play;
    for (const auto& step : story.steps) {
        if (step.words.starts_with("Given today is "))
            play.today = *parse_date(step.words.substr(15), "today");
        else if (step.words == "Given the demo facility")
            ask(play, "demo", {});
        else if (step.words.starts_with("Given the file "))
            put_file(play, step.words.substr(15));
        else if (step.words.starts_with("Given the records "))
            take_records(play, step);
        else if (step.words.starts_with("When the coach looks at the records "))
            bring_records(play, step, "When the coach looks at the records ", false);
        else if (step.words.starts_with("When the coach brings the records "))
            bring_records(play, step, "When the coach brings the records ", true);
        else if (step.words.starts_with("When the coach asks import_block for "))
            bring_block(play, step, "When the coach asks import_block for ");
        else if (step.words.starts_with("When the coach asks "))
            ask_step(play, step);
        else if (step.words.starts_with("Then "))
            expect(play, step);
        else
            play.faults.push_back("line " + std::to_string(step.line) + ": not understood: " + step.words);
    }
    return play.faults;
}

} // namespace stories
