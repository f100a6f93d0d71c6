// No text a coach reads says that one thing causes another: every operation's registered texts, the guide, the words of the
// pages, and the sentences written in the engine's sources.
#include "operations/operation.h"
#include "reports/check_claims.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>

using namespace amentum;
namespace files = std::filesystem;

namespace {

const files::path root = AMENTUM_SOURCE_DIR;

std::string text_of(const files::path& path) {
    std::ifstream in(path);
    return {std::istreambuf_iterator<char>(in), {}};
}

// What stands between quotes, literal after literal; a semicolon outside them ends a sentence, so that a sentence written over
// several lines is read as one.
std::string literals_of(const std::string& source, const std::string& quotes) {
    std::string text;
    char open = 0;
    for (std::size_t i = 0; i < source.size(); ++i) {
        const char c = source[i];
        if (open) {
            if (c == '\\' && i + 1 < source.size())
                text += source[++i];
            else if (c == open)
                open = 0;
            else
                text += c;
        } else if (c == '/' && i + 1 < source.size() && source[i + 1] == '/')
            i = std::min(source.find('\n', i), source.size());
        else if (quotes.find(c) != std::string::npos &&
                 !(i > 0 && std::isdigit(static_cast<unsigned char>(source[i - 1]))))
            open = c;
        else if (c == ';' || c == ',')
            text += "\n\n";
    }
    return text;
}

void check_texts(const files::path& folder, const std::set<std::string>& endings, const std::string& quotes,
                 int at_least) {
    int read = 0;
    for (const auto& entry : files::recursive_directory_iterator(root / folder)) {
        if (!endings.contains(entry.path().extension().string()) ||
            entry.path().string().find("/tests/") != std::string::npos ||
            entry.path().string().find(".test.") != std::string::npos ||
            entry.path().stem() == "check_claims") // the list of the words itself
            continue;
        ++read;
        const std::string text = text_of(entry.path());
        for (const auto& claim : check_claims(quotes.empty() ? text : literals_of(text, quotes)))
            FAIL_CHECK(entry.path().string() << ": " << claim);
    }
    CHECK(read >= at_least);
}

} // namespace

TEST_CASE("a sentence over several literals is read as one, an identifier is not read") {
    CHECK(check_claims(literals_of("say(\"Lifting \"\n \"causes speed.\"); causes(x); // causes", "\""))
              .size() == 1);
    CHECK(check_claims(literals_of("causes: 'What makes the bands', b: 'It causes pain.'", "'`")).size() ==
          1);
    CHECK(check_claims(literals_of("say(\"Goes with is not \"\n \"causes.\");", "\"")).empty());
}

TEST_CASE("no operation's registered text claims a cause") {
    CHECK(operations().size() >= 30);
    for (const auto& operation : operations()) {
        CAPTURE(operation.name);
        CHECK(check_claims(operation.summary).empty());
        for (const auto& field : operation.fields)
            CHECK(check_claims(field.meaning).empty());
    }
}

TEST_CASE("no page of the guide claims a cause") {
    check_texts("docs/guide", {".md"}, "", 30);
}
TEST_CASE("no words of the pages claim a cause") {
    check_texts("web/src/words", {".ts"}, "'`\"", 20);
}
TEST_CASE("no sentence of the engine claims a cause") {
    for (const auto* module :
         {"operations", "reports", "inference", "planning", "guard_rails", "measurement"})
        check_texts(files::path("engine") / module, {".cpp", ".h"}, "\"", 3);
}
