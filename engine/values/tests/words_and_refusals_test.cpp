// Names, numbers as text, and the table of refusals.
#include "values/identifier.h"
#include "values/method.h"
#include "values/nearest_name.h"
#include "values/refusal.h"
#include "values/shortest_decimal.h"

#include <doctest/doctest.h>

#include <cstring>
#include <fstream>
#include <random>
#include <sstream>

using namespace amentum;

TEST_CASE("edit distance: the textbook pairs") {
    CHECK(edit_distance("kitten", "sitting") == 3); // [Levenshtein1966] as usually shown
    CHECK(edit_distance("", "abc") == 3);
    CHECK(edit_distance("find-limiters", "find_limiters") == 0); // one word, however it is joined
}

TEST_CASE("a near name is offered, a far one is not") {
    const std::vector<std::string> known{"Ona Reyes", "Bo Tarn"};
    CHECK(nearest_name("ona reyez", known) == "Ona Reyes");
    CHECK(nearest_name("somebody else", known) == std::nullopt);
}

TEST_CASE("a number's shortest text reads back as the same number, without an exponent") {
    CHECK(format_shortest(97.5) == "97.5");
    CHECK(format_shortest(-0.0) == "0");
    CHECK(format_fixed(-0.04, 1) == "0.0");
    std::mt19937_64 random(20260601);
    for (int i = 0; i < 20000; ++i) {
        std::uint64_t bits = random();
        double x;
        std::memcpy(&x, &bits, sizeof x);
        if (!(x == x) || x - x != 0)
            continue; // not a number, or infinite
        const std::string text = format_shortest(x);
        CHECK(text.find('e') == std::string::npos);
        CHECK(parse_number(text) == x);
    }
}

TEST_CASE("numbers are read whole or not at all") {
    CHECK(parse_number("+12.5") == 12.5);
    CHECK(parse_number("12,5", DecimalMark::comma) == 12.5);
    for (const char* text : {"", "12,5", "12.5 kg", "1e999", "nan", "--1", "0x10"})
        CHECK(parse_number(text) == std::nullopt);
    CHECK(parse_number("1.5", DecimalMark::comma) == std::nullopt);
}

TEST_CASE("a slug keeps letters of any script") {
    CHECK(slug("Ona  Reyes-Ó'Dea") == "ona-reyes-Ó-dea");
    CHECK(slug(" -- ") == "");
}

TEST_CASE("the table of refusals is whole, in order, and is the page docs/refusals.md") {
    std::string page = "# Refusals\n\nEvery refusal has one of these codes, a sentence, the field, what was "
                       "given and what is allowed.\n"
                       "This page is the table of `engine/values/refusal.cpp`; a test compares them.\n\n| "
                       "code | name | meaning |\n|---|---|---|\n";
    int last = 0;
    for (const auto& kind : refusal_kinds()) {
        CHECK(static_cast<int>(kind.code) > last);
        last = static_cast<int>(kind.code);
        CHECK(&refusal_kind(kind.code) == &kind);
        page += "| " + std::to_string(last) + " | `" + kind.name + "` | " + kind.meaning + " |\n";
    }
    std::ifstream file(AMENTUM_SOURCE_DIR "/docs/refusals.md");
    std::ostringstream held;
    held << file.rdbuf();
    CHECK(held.str() == page);
}

TEST_CASE("a method's arguments are checked once: names, words, numbers, ranges, lists") {
    const std::vector<MethodInput> inputs{{"load_kg", "the load", 1, 500},
                                          {"equation", "which", 0, 0, {"epley", "brzycki"}, "epley"},
                                          {"speeds", "the throws", 1, 60, {}, "", true}};
    const auto good = check_arguments(inputs, {{"load_kg", "100"}, {"speeds", "30,31.5"}});
    REQUIRE(good);
    CHECK(good->number("load_kg") == 100);
    CHECK(good->word("equation") == "epley");
    CHECK(good->list("speeds") == std::vector<double>{30, 31.5});
    CHECK(check_arguments(inputs, {}).refusal().code == RefusalCode::missing_field);
    CHECK(check_arguments(inputs, {{"load", "1"}}).refusal().code == RefusalCode::unknown_field);
    CHECK(check_arguments(inputs, {{"load_kg", "0"}}).refusal().allowed == "1 to 500");
    CHECK(check_arguments(inputs, {{"load_kg", "heavy"}}).refusal().code == RefusalCode::wrong_type);
    CHECK(check_arguments(inputs, {{"load_kg", "5"}, {"equation", "eply"}})
              .refusal()
              .sentence.find("Did you mean \"epley\"?") != std::string::npos);
    CHECK(!check_arguments(inputs, {{"load_kg", "5"}})->has("speeds"));
}
