// Names, numbers as text, and the table of refusals.
#include "values/athlete.h"
#include "values/identifier.h"
#include "values/interval.h"
#include "values/letters.h"
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

namespace {

// A switch without a default: a new code that is not counted here does not compile (-Wall -Werror).
int place_in_order(RefusalCode code) {
    switch (code) {
    case RefusalCode::missing_field:
        return 0;
    case RefusalCode::unknown_field:
        return 1;
    case RefusalCode::wrong_type:
        return 2;
    case RefusalCode::out_of_range:
        return 3;
    case RefusalCode::unknown_choice:
        return 4;
    case RefusalCode::impossible_date:
        return 5;
    case RefusalCode::unreadable_file:
        return 6;
    case RefusalCode::unknown_name:
        return 7;
    case RefusalCode::already_held:
        return 8;
    case RefusalCode::two_units:
        return 9;
    case RefusalCode::method_does_not_apply:
        return 10;
    case RefusalCode::too_few_data:
        return 11;
    case RefusalCode::load_not_makeable:
        return 12;
    case RefusalCode::no_block_fits:
        return 13;
    case RefusalCode::caution_needs_reason:
        return 14;
    case RefusalCode::blocked_by_guard_rail:
        return 15;
    case RefusalCode::quiet_too_short:
        return 16;
    case RefusalCode::quiet_too_noisy:
        return 17;
    case RefusalCode::no_flight:
        return 18;
    case RefusalCode::second_hop:
        return 19;
    case RefusalCode::offset_too_large:
        return 20;
    case RefusalCode::saturated_plate:
        return 21;
    case RefusalCode::wrong_rate:
        return 22;
    case RefusalCode::peak_at_end:
        return 23;
    case RefusalCode::trials_disagree:
        return 24;
    case RefusalCode::not_this_effort:
        return 25;
    case RefusalCode::no_such_posture:
        return 26;
    case RefusalCode::over_determined:
        return 27;
    case RefusalCode::stopped:
        return 28;
    }
    return -1;
}
constexpr int codes = 29;

} // namespace

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
    REQUIRE(refusal_kinds().size() == codes);
    for (int i = 0; i < codes; ++i)
        CHECK(place_in_order(refusal_kinds()[i].code) == i);
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

TEST_CASE("a ready-made refusal says the field, what was given, what is allowed and the nearest word") {
    const Refusal range = refuse_range("reps", 0, 1, 15, "");
    CHECK(range.sentence == "reps is 0, but must be 1 to 15.");
    CHECK(range.field == "reps");
    CHECK(range.given == "0");
    CHECK(range.allowed == "1 to 15");
    const std::vector<std::string> sides{"left", "right"};
    CHECK(refuse_choice("side", "lefd", sides).sentence ==
          "side is \"lefd\", but must be one of left, right. Did you mean \"left\"?");
    CHECK(refuse_unknown("athlete", "nobody", sides).sentence == "There is no athlete \"nobody\".");
    CHECK(refuse_missing("kit", "where").code == RefusalCode::missing_field);
}

TEST_CASE("each value of an enumeration has one word, and the word leads back") {
    CHECK(all_words<Hand>() == std::vector<std::string>{"left", "right"});
    for (const auto& text : all_words<Role>())
        CHECK(word(*from_word<Role>(text)) == text);
    for (const auto& text : all_words<Level>())
        CHECK(word(*from_word<Level>(text)) == text);
    CHECK(from_word<Hand>("Left") == std::nullopt); // whoever reads files folds case before
    CHECK(from_word<Hand>("") == std::nullopt);
}

TEST_CASE("intervals: the printed quantiles, and the normal distribution's own table") {
    CHECK(normal_cdf(0) == 0.5);
    CHECK(normal_cdf(1) ==
          doctest::Approx(0.841344746068543).epsilon(1e-14)); // [AbramowitzStegun, table 26.1]
    CHECK(normal_cdf(-2) == doctest::Approx(0.022750131948179).epsilon(1e-12));
    CHECK(normal_cdf(z80) == doctest::Approx(0.90).epsilon(1e-14));
    CHECK(normal_cdf(z90) == doctest::Approx(0.95).epsilon(1e-14));
    CHECK(normal_cdf(z95) == doctest::Approx(0.975).epsilon(1e-14));
    CHECK(normal_cdf(z99) == doctest::Approx(0.995).epsilon(1e-14));
    const Interval band = Estimate{10, 2}.central();
    CHECK(band.low == doctest::Approx(10 - 2 * 1.2815515655446004));
    CHECK(band.high - 10 == doctest::Approx(10 - band.low));
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
    CHECK(check_arguments(inputs, {{"load_kg", "1"}}).value().number("load_kg") ==
          1); // both ends belong to it
    CHECK(check_arguments(inputs, {{"load_kg", "500"}}).value().number("load_kg") == 500);
    CHECK(check_arguments(inputs, {{"load_kg", "500.01"}}).refusal().code == RefusalCode::out_of_range);
    CHECK(check_arguments(inputs, {{"load_kg", "nan"}}).refusal().code == RefusalCode::wrong_type);
    CHECK(check_arguments(inputs, {{"load_kg", "5"}, {"speeds", "30,,31"}}).refusal().field == "speeds");
    CHECK(check_arguments(inputs, {{"load_kg", "5"}, {"speeds", "30,61"}}).refusal().given == "61");
    CHECK(check_arguments(inputs, {{"load_kg", "5,6"}}).refusal().code == RefusalCode::wrong_type);
    CHECK(!check_arguments(inputs, {{"load_kg", "5"}})->has("speeds"));
}

TEST_CASE("letters are counted, not spaces and not octets") {
    CHECK(letters_in("          ") == 0);
    CHECK(letters_in("a b\tc\n") == 3);
    CHECK(letters_in("\xC3\xA4lter") == 5); // älter
}
