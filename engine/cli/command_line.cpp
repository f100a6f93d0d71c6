#include "cli/command_line.h"

#include "cli/files.h"
#include "operations/json_text.h"
#include "operations/operation.h"
#include "operations/workplace.h"
#include "values/nearest_name.h"

#include <CLI/CLI.hpp>
#include <boost/json.hpp>

#include <algorithm>
#include <iostream>
#include <map>

#include <unistd.h>

namespace amentum {
namespace {

enum ExitCode { done = 0, refused = 1, wrong_command_line = 2, store_failed = 3 };

struct Given {
    std::string store = "amentum.store";
    std::string today;
    bool json = false;
    std::string file;
    std::vector<std::string> files; // of an operation that looks at files, one after another
    std::string folder;
    std::map<std::string, std::string> fields;
    std::vector<std::string> words; // method NAME key=value ...
};

std::string dashed(std::string name) {
    std::replace(name.begin(), name.end(), '_', '-');
    return name;
}

int print_refusal(const Refusal& refusal, bool json) {
    if (json)
        std::cout << json_text(refusal_document(refusal), Layout::indented) << "\n";
    else
        std::cerr << refusal.sentence << "\n";
    return refused;
}

bool looks_at_files(const Operation& operation) {
    return std::any_of(operation.fields.begin(), operation.fields.end(),
                       [](const auto& field) { return field.name == "file_name"; });
}

void add_operation(CLI::App& app, const Operation& operation, Given& given) {
    CLI::App* command = app.add_subcommand(dashed(operation.name), operation.summary);
    for (const auto& field : operation.fields) {
        const std::string option = "--" + dashed(field.name);
        command->add_option_function<std::string>(
            option, [&given, name = field.name](const std::string& text) { given.fields[name] = text; },
            field.meaning + (field.needed ? " (needed)" : ""));
        if (field.name == "text")
            command->add_option("--file", given.file, "read the text from this file; - for standard input");
    }
    if (looks_at_files(operation))
        command->add_option("files", given.files, "one file or several, each on its own")
            ->option_text("FILE ...");
    if (operation.answer_schema.at("properties").get_object().contains("files"))
        command->add_option("--folder", given.folder, "write the files there");
    if (operation.name == "method")
        command->add_option("words", given.words, "NAME key=value ...");
}

// A single needed field may stand without its option's name: amentum find-limiters "Ona Reyes".
void add_plain_word(CLI::App& app, const Operation& operation, Given& given) {
    std::vector<std::string> needed;
    for (const auto& field : operation.fields)
        if (field.needed)
            needed.push_back(field.name);
    if (operation.effect != Effect::reads || needed.empty())
        return;
    app.get_subcommand(dashed(operation.name))
        ->add_option_function<std::string>(
            needed.front() + "_word",
            [&given, name = needed.front()](const std::string& text) { given.fields[name] = text; },
            "the same as --" + dashed(needed.front()))
        ->option_text(dashed(needed.front()));
}

Result<std::map<std::string, std::string>> method_fields(const std::vector<std::string>& words) {
    std::map<std::string, std::string> fields;
    if (words.empty())
        return fields;
    fields["name"] = words.front();
    boost::json::object inputs;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const auto equals = words[i].find('=');
        if (equals == std::string::npos || equals == 0)
            return Refusal{RefusalCode::wrong_type,
                           "\"" + words[i] + "\" must be written key=value, such as reps=5.", words[i],
                           words[i], "key=value"};
        inputs[words[i].substr(0, equals)] = words[i].substr(equals + 1);
    }
    fields["inputs"] = json_text(inputs);
    return fields;
}

int run_operation(Workplace& workplace, const Operation& operation, Given& given) {
    if (operation.name == "method" && !given.words.empty()) {
        auto fields = method_fields(given.words);
        if (!fields)
            return print_refusal(fields.refusal(), given.json);
        given.fields = *std::move(fields);
    }
    if (!given.file.empty()) {
        auto text = read_text_file(given.file);
        if (!text)
            return print_refusal(text.refusal(), given.json);
        given.fields["text"] = *std::move(text);
    }
    const auto request = request_from_texts(operation, given.fields);
    if (!request)
        return print_refusal(request.refusal(), given.json);
    const auto answer = operation.run(workplace, *request);
    if (!answer)
        return print_refusal(answer.refusal(), given.json);
    if (!given.folder.empty()) {
        const auto written = write_exported_files(given.folder, *answer);
        if (!written)
            return print_refusal(written.refusal(), given.json);
    }
    std::cout << (given.json ? json_text(*answer, Layout::indented) + "\n" : operation.words(*answer));
    const auto refusal = answer->as_object().if_contains("refusal"); // shown, but not measured
    return refusal && refusal->is_object() ? refused : done;
}

// Each file is asked about on its own: one that fails stops none of the others.
int run_for_each_file(Workplace& workplace, const Operation& operation, Given& given) {
    if (given.files.empty())
        return run_operation(workplace, operation, given);
    int worst = done;
    for (const auto& file : given.files) {
        workplace.put_on_table(file);
        given.fields["file_name"] = file;
        if (given.files.size() > 1 && !given.json)
            std::cout << file << "\n";
        worst = std::max(worst, run_operation(workplace, operation, given));
    }
    return worst;
}

// CLI11 says only that something was not expected; a person wants the nearest word.
std::string hint_for(const std::vector<std::string>& arguments) {
    std::vector<std::string> commands{"serve"};
    for (const auto& operation : operations())
        commands.push_back(dashed(operation.name));
    const Operation* operation = nullptr;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const auto& word = arguments[i];
        if (word == "--store" || word == "--today") {
            ++i;
            continue;
        }
        if (!operation && !word.starts_with("-")) {
            if (word == "serve" || word == "print-openapi")
                return "";
            for (const auto& each : operations())
                if (dashed(each.name) == word)
                    operation = &each;
            if (operation)
                continue;
            const auto near = nearest_name(word, commands);
            return "There is no command \"" + word + "\"." + (near ? " Did you mean \"" + *near + "\"?" : "");
        }
        if (operation && word.starts_with("--")) {
            std::vector<std::string> options{"json", "file", "folder", "help"};
            for (const auto& field : operation->fields)
                options.push_back(dashed(field.name));
            const std::string name =
                word.substr(2, word.find('=') == std::string::npos ? word.npos : word.find('=') - 2);
            if (std::find(options.begin(), options.end(), name) != options.end())
                continue;
            const auto near = nearest_name(name, options);
            return "There is no option \"--" + name + "\"." +
                   (near ? " Did you mean \"--" + *near + "\"?" : "");
        }
    }
    return "";
}

Result<Workplace::Opening> opening_of(const Given& given) {
    Workplace::Opening opening{given.store, {}};
    if (given.today.empty())
        return opening;
    const auto today = parse_date(given.today, "today");
    if (!today)
        return today.refusal();
    opening.today = *today;
    return opening;
}

// On one line of a terminal, over and over; said once for every per cent.
void print_progress(double share) {
    static int said = -1; // the progress of one process has one line
    const int percent = static_cast<int>(100 * share);
    if (percent == said)
        return;
    said = percent;
    std::cerr << "\r" << percent << " %" << (percent == 100 ? "\n" : "") << std::flush;
}

int run_chosen(CLI::App& app, Given& given, const std::vector<std::string>& serve_options,
               const ServeCommand& serve) {
    if (app.got_subcommand("print-openapi")) {
        std::cout << json_text(openapi_document(), Layout::indented) << "\n";
        return done;
    }
    const auto opening = opening_of(given);
    if (!opening)
        return print_refusal(opening.refusal(), given.json);
    Workplace workplace(*opening);
    if (isatty(STDERR_FILENO) != 0)
        workplace.tell_progress_to(print_progress);
    if (app.got_subcommand("serve"))
        return serve(workplace, serve_options);
    for (const auto& operation : operations())
        if (app.got_subcommand(dashed(operation.name)))
            return run_for_each_file(workplace, operation, given);
    return wrong_command_line;
}

} // namespace

int run_command_line(const std::vector<std::string>& arguments, const ServeCommand& serve) {
    Given given;
    CLI::App app(
        "Amentum: which physical quality goes with this thrower's velocity, and the block that trains it.",
        "amentum");
    app.require_subcommand(1);
    app.fallthrough();
    app.add_option("--store", given.store, "the store's file (when left out: amentum.store)")
        ->envname("AMENTUM_STORE");
    app.add_option("--today", given.today, "take this day as today, YYYY-MM-DD");
    app.add_flag("--json", given.json, "print the same document as the HTTP route");
    app.footer("Exit codes: 0 done, 1 refused, 2 wrong command line, 3 disk or database failed.");
    for (const auto& operation : operations()) {
        add_operation(app, operation, given);
        add_plain_word(app, operation, given);
    }
    CLI::App* serving = app.add_subcommand("serve", "Serve the pages and the operations over HTTP.");
    app.add_subcommand("print-openapi", "Print the OpenAPI 3.1 document of all routes.");
    std::vector<std::string> serve_options;
    for (const char* option : {"--port", "--address", "--pages", "--workers"})
        serving->add_option_function<std::string>(
            option,
            [&serve_options, option](const std::string& text) {
                serve_options.insert(serve_options.end(), {option, text});
            },
            std::string(option) == "--pages" ? "the folder of built pages" : "");
    try {
        std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
        app.parse(reversed);
    } catch (const CLI::Success& wanted) {
        return app.exit(wanted);
    } catch (const CLI::ParseError& wrong) {
        const std::string hint = hint_for(arguments);
        std::cerr << (hint.empty() ? wrong.what() : hint) << "\nRun amentum --help for the commands.\n";
        return wrong_command_line;
    }
    try {
        return run_chosen(app, given, serve_options, serve);
    } catch (const std::exception& failed) {
        std::cerr << "The store could not be read or written: " << failed.what() << "\n";
        return store_failed;
    }
}

} // namespace amentum
