// The invented hall holds what a real one could hold, and what the engine measures there is what the simulation put in.
// What stands behind the numbers: loads by the equipment module's enumeration; errors and effects by the simulation's
// own truth, which the engine never sees; groups of throwers by publication.
#include "demo_facility/demo_facility.h"
#include "demo_facility/people.h"
#include "demo_facility/test_days.h"
#include "demo_facility/truth.h"
#include "equipment/solve_load.h"
#include "inference/test_scale.h"
#include "measurement/measure_test.h"
#include "records/reference_tables.h"
#include "values/interval.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <tuple>

using namespace amentum;

namespace {

const Date last_day = *parse_date("2026-06-01", "last_day");
constexpr std::uint64_t seeds = 6;

const ReferenceTables& catalogue() {
    static const ReferenceTables tables = [] {
        std::map<std::string, std::string> texts;
        for (const auto& name : reference_file_names()) {
            std::ifstream file(AMENTUM_SOURCE_DIR "/data/" + name, std::ios::binary);
            REQUIRE(file);
            texts[name] = {std::istreambuf_iterator<char>(file), {}};
        }
        auto parsed = parse_reference_tables(texts);
        REQUIRE(parsed);
        return *std::move(parsed);
    }();
    return tables;
}

const DemoFacility& made(std::uint64_t seed) {
    static std::map<std::uint64_t, DemoFacility> all;
    const auto held = all.find(seed);
    return held != all.end() ? held->second
                             : all.emplace(seed, make_demo_facility(seed, last_day)).first->second;
}

const Athlete& athlete_of(const RecordSet& records, const AthleteId& id) {
    const auto found = std::find_if(records.athletes.begin(), records.athletes.end(),
                                    [&](const auto& a) { return a.id == id; });
    REQUIRE(found != records.athletes.end());
    return *found;
}

// The readings of one athlete, test, side and day, as measure_test wants them.
using Group = std::tuple<std::string, std::string, Side, int>;
std::map<Group, std::vector<Reading>> groups_of(const RecordSet& records) {
    std::map<Group, std::vector<Reading>> groups;
    for (const auto& r : records.readings)
        groups[{r.athlete.text, r.test, r.side, r.date.days_since_1970()}].push_back(r);
    return groups;
}

void check_makeable(const Kit& kit, LoadMeans means, Mass load, const std::optional<std::string>& item) {
    const auto choice = solve_load(kit, means, load, item);
    REQUIRE(choice);
    CHECK(choice->nearest.total.kilograms() == doctest::Approx(load.kilograms()).epsilon(1e-9));
}

// How often an 80 % interval around a measured day holds what the simulation put in, by test.
struct Coverage {
    int held = 0, all = 0;
    double share() const { return static_cast<double>(held) / all; }
};
std::map<std::string, Coverage> measured_coverage() {
    std::map<std::string, Coverage> coverage;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        const RecordSet& records = made(seed).records;
        std::map<std::string, TrueThrower> throwers;
        for (const auto& a : records.athletes)
            throwers.emplace(a.id.text, simulate_thrower(a, last_day, seed));
        for (const auto& [group, readings] : groups_of(records)) {
            const auto& [id, test, side, date] = group;
            const TestKind& kind = *catalogue().test_kind(test);
            const int day = demo_days - (last_day.days_since_1970() - date);
            const bool velocity = test == "throwing_velocity";
            if (kind.quality.empty() || (!velocity && true_test(test).quality < 0))
                continue;
            const bool throws_right = athlete_of(records, {id}).throwing_hand == Hand::right;
            if (test == "grip_force" && (side == Side::right) != throws_right)
                continue; // the other hand, on the last days
            const auto result = measure_test(kind, readings);
            REQUIRE(result);
            if (result->device == "radar 2")
                continue;
            const auto& thrower = throwers.at(id);
            const double truth =
                velocity ? thrower.velocity[static_cast<std::size_t>(day)]
                         : true_test_value(athlete_of(records, {id}), thrower, last_day, day, test);
            const auto seen = on_scale(kind.scale, day, result->value, result->standard_error);
            const double put_in = on_scale(kind.scale, day, truth, 1e-9 * truth).value;
            ++coverage[test].all;
            coverage[test].held += std::abs(seen.value - put_in) <= z80 * std::sqrt(seen.variance);
        }
    }
    return coverage;
}

// Keys of every object of a JSON text, in the order they stand.
std::vector<std::vector<std::string>> keys_by_object(const std::string& json) {
    std::vector<std::vector<std::string>> done, open;
    std::string last;
    for (std::size_t i = 0; i < json.size(); ++i) {
        if (json[i] == '{')
            open.emplace_back();
        if (json[i] == '}') {
            REQUIRE(!open.empty());
            done.push_back(open.back());
            open.pop_back();
        }
        if (json[i] == '"') {
            const auto end = json.find('"', i + 1);
            last = json.substr(i + 1, end - i - 1);
            i = end;
        }
        if (json[i] == ':')
            open.back().push_back(last);
    }
    CHECK(open.empty());
    return done;
}

} // namespace

TEST_CASE("every key names something that exists, and nothing stands twice") {
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        const RecordSet& records = made(seed).records;
        std::set<std::string> names, ids, kits, cautions;
        for (const auto& kit : records.kits) {
            kits.insert(kit.id.text);
            std::set<std::string> labels;
            for (const auto& item : kit.items)
                CHECK(labels.insert(item.label).second);
        }
        for (const auto& caution : catalogue().cautions)
            cautions.insert(caution.key);
        for (const auto& a : records.athletes) {
            CHECK(names.insert(a.name).second);
            CHECK(ids.insert(a.id.text).second);
            CHECK(kits.count(a.kit.text) == 1);
            for (const auto& key : a.restrictions)
                CHECK(cautions.count(key) == 1);
        }
        std::set<std::tuple<std::string, int, int>> throws, calendar;
        for (const auto& t : records.throws) {
            CHECK(ids.count(t.athlete.text) == 1);
            CHECK(
                throws.emplace(t.athlete.text, t.date.days_since_1970(), static_cast<int>(t.setting)).second);
        }
        for (const auto& c : records.calendar) {
            CHECK(ids.count(c.athlete.text) == 1);
            CHECK(
                calendar.emplace(c.athlete.text, c.date.days_since_1970(), static_cast<int>(c.kind)).second);
        }
        for (const auto& s : records.sets)
            CHECK(catalogue().exercise(s.exercise) != nullptr);
        CHECK(records.readings.size() + records.throws.size() + records.calendar.size() +
                  records.sets.size() <
              45'000);
    }
}

TEST_CASE("every group of readings is a test result: nothing refused, all plausible") {
    for (std::uint64_t seed = 1; seed <= seeds; ++seed)
        for (const auto& [group, readings] : groups_of(made(seed).records)) {
            const TestKind* kind = catalogue().test_kind(std::get<1>(group));
            REQUIRE(kind);
            const auto result = measure_test(*kind, readings);
            if (!result)
                FAIL_CHECK(std::get<0>(group), " ", kind->key, ": ", result.refusal().sentence);
        }
}

TEST_CASE("every load lifted, tested or logged, can be made from what stands in that thrower's kit") {
    const std::map<std::string, std::pair<LoadMeans, std::optional<std::string>>> tested{
        {"split_squat_max", {LoadMeans::straight_bar, {}}},
        {"hex_bar_high_max", {LoadMeans::hex_bar, "high handles"}},
        {"press_max", {LoadMeans::dumbbell_pair, {}}},
        {"pull_up_max", {LoadMeans::added_plate, {}}}};
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        const RecordSet& records = made(seed).records;
        const auto kit_of = [&](const AthleteId& id) -> const Kit& {
            const auto& wanted = athlete_of(records, id).kit;
            return *std::find_if(records.kits.begin(), records.kits.end(),
                                 [&](const auto& kit) { return kit.id == wanted; });
        };
        for (const auto& r : records.readings) {
            const auto how = tested.find(r.test);
            if (how == tested.end())
                continue;
            REQUIRE(r.load);
            REQUIRE(r.reps);
            CHECK(*r.reps >= 1);
            CHECK(*r.reps <= 10);
            if (r.load->kilograms() > 0) // a pull-up with nothing added needs no plate
                check_makeable(kit_of(r.athlete), how->second.first, *r.load, how->second.second);
            else
                CHECK(r.test == "pull_up_max");
        }
        for (const auto& s : records.sets) {
            const Exercise& exercise = *catalogue().exercise(s.exercise);
            check_makeable(kit_of(s.athlete), exercise.means, *s.load, exercise.item);
        }
    }
}

TEST_CASE("below 16 nobody is tested with fewer than six repetitions, four with dumbbells") {
    for (std::uint64_t seed = 1; seed <= seeds; ++seed)
        for (const auto& r : made(seed).records.readings)
            if (r.reps && whole_years(athlete_of(made(seed).records, r.athlete).birth_date, r.date) < 16)
                CHECK(*r.reps >= (r.test == "press_max" ? 4 : 6));
}

TEST_CASE("an 80 % interval of one test day holds the truth 80 % of the time, more where a method adds its "
          "own error") {
    for (const auto& [test, coverage] : measured_coverage()) {
        CAPTURE(test);
        CAPTURE(coverage.all);
        CAPTURE(coverage.share());
        // 4 standard errors of a share of 0.8 for so many days
        const double luck = 4 * std::sqrt(0.8 * 0.2 / coverage.all);
        CHECK(coverage.share() > 0.8 - luck);
        const Measure measure = catalogue().test_kind(test)->measure;
        // A maximum from a set adds its equation's error, a radar its own; here Epley's line and the radar are true.
        if (measure == Measure::jump_height || measure == Measure::bound_distance ||
            measure == Measure::isometric_force)
            CHECK(coverage.share() < 0.8 + luck);
    }
}

TEST_CASE("throwers not findable have at most three test days, all others at least seven; both kinds exist") {
    int seldom = 0, found = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed)
        for (const auto& a : made(seed).records.athletes) {
            std::set<int> days;
            for (const auto& r : made(seed).records.readings)
                if (r.athlete == a.id && r.test != "stature") // youths stand at the wall every month
                    days.insert(r.date.days_since_1970());
            const bool findable = simulate_thrower(a, last_day, seed).findable;
            (findable ? found : seldom) += 1;
            if (findable)
                CHECK(days.size() >= 7);
            else
                CHECK(days.size() <= 3);
        }
    CHECK(seldom > 0);
    CHECK(found > 5 * seldom / 2);
}

TEST_CASE("the truth names each thrower once, its keys in alphabetical order at every depth") {
    const auto& facility = made(1);
    for (const auto& keys : keys_by_object(facility.truth))
        CHECK(std::is_sorted(keys.begin(), keys.end()));
    for (const auto& a : facility.records.athletes) {
        const std::string line = "\"athlete\": \"" + a.id.text + "\"";
        const auto at = facility.truth.find(line);
        REQUIRE(at != std::string::npos);
        CHECK(facility.truth.find(line, at + 1) == std::string::npos);
        const std::string rest = facility.truth.substr(at, facility.truth.find('\n', at) - at);
        const auto limiter = true_limiter(simulate_thrower(a, last_day, 1));
        CHECK(rest.find("\"limiter\": \"" + std::string(limiter.quality) + "\"") != std::string::npos);
        CHECK(limiter.gain_ms > 0);
    }
}

TEST_CASE("the true limiter is the largest product of effect and usual gain, worked by hand") {
    // All at 0: headroom 1 everywhere, so the largest within-effect, 0.45: 1.6 x 0.45 x 0.5 = 0.36 m/s, the first such.
    TrueThrower even{};
    even.state.push_back({});
    CHECK(std::string(true_limiter(even).quality) == "overhead_ball_speed");
    CHECK(true_limiter(even).gain_ms == doctest::Approx(0.36));
    // Single-leg strength 1 SD behind: headroom 1.5, 1.6 x 0.40 x 0.75 = 0.48 m/s.
    even.state.back()[0] = -1;
    CHECK(std::string(true_limiter(even).quality) == "single_leg_strength");
    CHECK(true_limiter(even).gain_ms == doctest::Approx(0.48));
}

TEST_CASE(
    "a youth's growth brings 1.5 mph a year and 1.2 mph an inch [Sgroi2015]; an adult's brings nothing") {
    for (const auto& a : demo_athletes(last_day)) {
        const double grown = simulate_thrower(a, last_day, 1).grown_ms;
        const double years = demo_days / 365.25;
        if (age_on(a, last_day, 0) >= 18)
            CHECK(grown == doctest::Approx(0));
        if (age_on(a, last_day, demo_days) < 16 && a.stature) { // 5.5 cm a year, still growing all the while
            const double mph = 1.5 * years + 1.2 * 5.5 / 2.54 * years;
            CHECK(grown == doctest::Approx(mph * 0.44704).epsilon(1e-6));
        }
    }
}

TEST_CASE("college pitchers differ by sigma_v, softball pitchers throw 24 to 30 m/s") {
    // Published spreads within a college group: 35 +- 3 m/s [GuidoWerner2012]; sigma_v must not be above that.
    // Windmill pitching of grown women, about 60 mph (27 m/s): common practice, no source.
    double sum = 0, squares = 0, softball = 0;
    int n = 0, women = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed)
        for (const auto& a : demo_athletes(last_day)) {
            const bool college = a.level == Level::college && a.sport == Sport::baseball;
            const bool woman = a.sport == Sport::softball && whole_years(a.birth_date, last_day) >= 19;
            if (a.role != Role::pitcher || (!college && !woman))
                continue;
            const double ms = simulate_thrower(a, last_day, seed).velocity.back();
            if (woman)
                softball += ms, ++women;
            else
                sum += ms, squares += ms * ms, ++n;
        }
    const double spread = std::sqrt(squares / n - sum / n * sum / n);
    CAPTURE(n);
    CHECK(spread == doctest::Approx(true_velocity_spread).epsilon(0.06));
    CHECK(spread < 3);
    CHECK(softball / women > 24);
    CHECK(softball / women < 30);
}
