// Laws every block obeys, over 10,000 seeded random athletes, gyms and calendars: half with the invented
// exercises of the unit tests, half with the real catalogue. Nothing here asks the planner or the equipment
// module how it got there:
// loads are enumerated plate by plate, minutes added up, dates compared. The search is short, because laws must
// hold however long it looks; AMENTUM_ATHLETES sets another number of athletes.
#include "guard_rails/check_block.h"
#include "planning/plan_block.h"
#include "planning/price_block.h"
#include "planning/tests/invented_gym.h"
#include "records/reference_tables.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <map>
#include <random>
#include <set>
#include <sstream>
#include <tuple>

using namespace amentum;

namespace {

const ReferenceTables& real_tables() {
    static const ReferenceTables tables = [] {
        std::map<std::string, std::string> texts;
        for (const auto& name : reference_file_names()) {
            std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/data/" + name);
            std::ostringstream text;
            text << file.rdbuf();
            texts[name] = text.str();
        }
        auto parsed = parse_reference_tables(texts);
        REQUIRE_MESSAGE(parsed, (parsed ? "" : parsed.refusal().sentence));
        return *std::move(parsed);
    }();
    return tables;
}

class Dice {
public:
    explicit Dice(std::uint64_t seed) : stream_(seed) {}
    int from(int low, int high) {
        return low + static_cast<int>(stream_() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool chance(int percent) { return from(1, 100) <= percent; }

private:
    std::mt19937_64 stream_;
};

// --- random worlds
// ---------------------------------------------------------------------------------------------

KitItem column_item(Dice& dice) {
    return {ItemKind::column, "column",         1, {}, {}, dice.chance(50) ? 0.5 : 1.0,
            Mass::pounds(10), Mass::pounds(200)};
}

Kit random_kit(Dice& dice) {
    Kit kit{KitId{"gym"}, "Gym", dice.chance(70) ? MassUnit::lb : MassUnit::kg, {}};
    const auto add = [&](int percent, KitItem item) {
        if (dice.chance(percent))
            kit.items.push_back(std::move(item));
    };
    using invented::item;
    add(60, item(ItemKind::straight_bar, "bar", 1, Mass::kilograms(20)));
    add(60, item(ItemKind::hex_bar, "hex bar, low handles", 1, Mass::pounds(dice.from(45, 75))));
    add(50, item(ItemKind::hex_bar, "hex bar, high handles", 1, Mass::pounds(60)));
    add(50, item(ItemKind::safety_bar, "safety bar", 1, Mass::pounds(65)));
    for (const double lb : {45.0, 25.0, 10.0, 5.0, 2.5})
        add(75, item(ItemKind::plate, format_shortest(lb) + " lb plate", dice.from(1, 6), Mass::pounds(lb)));
    add(30, item(ItemKind::plate, "10 kg plate", 2, Mass::kilograms(dice.from(990, 1010) / 100.0)));
    for (int lb = 5; lb <= 70; lb += 5)
        add(40,
            item(ItemKind::dumbbell, std::to_string(lb) + " lb dumbbell", dice.from(1, 2), Mass::pounds(lb)));
    for (const int lb : {2, 4, 6, 8, 10, 12})
        add(50, item(ItemKind::ball, std::to_string(lb) + " lb ball", 1, Mass::pounds(lb)));
    add(50, column_item(dice));
    for (const auto* colour : {"red", "blue"})
        add(60, item(ItemKind::band, std::string(colour) + " band", 1));
    for (const auto kind :
         {ItemKind::rack, ItemKind::bench, ItemKind::pull_up_bar, ItemKind::belt, ItemKind::box,
          ItemKind::pad, ItemKind::landmine, ItemKind::open_floor, ItemKind::wall_bay, ItemKind::sled})
        add(60, item(kind, word(kind), 1));
    return kit;
}

struct Case {
    BlockRequest request;
    bool quiet; // nothing in the calendar
};

Case random_case(Dice& dice, const invented::World& world, const ReferenceTables* real) {
    Athlete athlete = invented::thrower(dice.from(9, 30), dice.from(0, 60) / 10.0);
    BlockRequest request{athlete,
                         random_kit(dice),
                         invented::monday() + dice.from(0, 6),
                         dice.from(4, 16),
                         dice.from(1, 5),
                         static_cast<double>(dice.from(20, 120)),
                         {},
                         world.quality_list,
                         world.exercise_list,
                         world.caution_list};
    std::vector<std::string> tests{"hex_low_max", "squat_max", "split_max",
                                   "pull_max",    "row_max",   "press_max"};
    if (real) {
        request.qualities = real->qualities;
        request.catalogue = real->exercises;
        request.cautions = real->cautions;
        tests.clear();
        for (const auto& kind : real->test_kinds)
            if (kind.unit == TestUnit::kilogram && kind.measure != Measure::body_mass)
                tests.push_back(kind.key);
    }
    for (const auto& caution : request.cautions)
        if (caution.key != "every_thrower" && dice.chance(12))
            request.athlete.restrictions.push_back(caution.key);
    for (const auto& exercise : request.catalogue)
        for (const auto& key : exercise.cautions)
            if (dice.chance(5))
                request.overrides.push_back(
                    {athlete.id, exercise.key, key, "agreed with the clinic", "Coach", request.start});
    for (const auto& quality : request.qualities)
        if (dice.chance(60))
            request.priorities.push_back(
                {quality.key, dice.from(0, 100) / 100.0, "goes with +0.5 mph (80 %: 0 to 1)"});
    request.limiters_known = dice.chance(70);
    const double size = athlete.birth_date < invented::monday() - 365 * 15 ? 1 : 0.5;
    for (const auto& test : tests)
        if (dice.chance(70))
            request.maxima[test] = {size * dice.from(40, 200), size * dice.from(2, 12)};
    if (dice.chance(85))
        request.body_mass = Estimate{size * dice.from(60, 110), 0.5};
    if (dice.chance(30))
        for (int day = 1; day <= 7; ++day)
            if (dice.chance(75) || day <= request.sessions_per_week)
                request.weekdays.push_back(day);
    request.moves = 1'200;
    const bool quiet = dice.chance(40);
    for (int i = 0; !quiet && i < dice.from(1, 20); ++i) {
        const Date first = request.start + dice.from(0, 7 * request.weeks);
        const auto kind = static_cast<DayKind>(dice.from(0, 4));
        request.calendar.push_back(
            {athlete.id, first, first + (kind == DayKind::start ? 0 : dice.from(0, 3)), kind, ""});
    }
    if (real)
        for (const auto& row : real->pain_blocks)
            if (dice.chance(4))
                request.painful.push_back(row);
    return {std::move(request), quiet};
}

// --- what the gym can make, plate by plate
// -----------------------------------------------------------------------

using Sums = std::vector<double>; // kg

void stack(const std::vector<std::pair<double, int>>& kinds, std::size_t at, double sum, int left,
           Sums& sums) {
    if (at == kinds.size()) {
        sums.push_back(sum);
        return;
    }
    for (int n = 0; n <= std::min(kinds[at].second, left); ++n)
        stack(kinds, at + 1, sum + n * kinds[at].first, left - n, sums);
}

Sums plate_sums(const Kit& kit, int sides, int most) {
    std::map<double, int> by_mass;
    for (const auto& item : kit.items)
        if (item.kind == ItemKind::plate)
            by_mass[item.mass->kilograms()] += item.count;
    std::vector<std::pair<double, int>> kinds;
    for (const auto& [mass, count] : by_mass)
        kinds.emplace_back(mass, count / sides);
    Sums sums;
    stack(kinds, 0, 0, most, sums);
    return sums;
}

Sums makeable(const Kit& kit, const Exercise& e) {
    const std::map<LoadMeans, ItemKind> bars{{LoadMeans::straight_bar, ItemKind::straight_bar},
                                             {LoadMeans::hex_bar, ItemKind::hex_bar},
                                             {LoadMeans::safety_bar, ItemKind::safety_bar},
                                             {LoadMeans::camber_bar, ItemKind::camber_bar}};
    Sums sums;
    const auto with_plates = [&](double base, double factor, const Sums& plates) {
        for (const double each : plates)
            sums.push_back(base + factor * each);
    };
    for (const auto& item : kit.items) {
        if (e.item && item.label.find(*e.item) == std::string::npos)
            continue;
        const double mass = item.mass ? item.mass->kilograms() : 0;
        if (const auto bar = bars.find(e.means); bar != bars.end() && bar->second == item.kind)
            with_plates(mass, 2, plate_sums(kit, 2, 1000));
        if (e.means == LoadMeans::landmine && item.kind == ItemKind::straight_bar)
            with_plates(mass / 2, 1, plate_sums(kit, 1, 1000));
        if (e.means == LoadMeans::added_plate && item.kind == ItemKind::belt)
            with_plates(0, 1, plate_sums(kit, 1, 4));
        if (e.means == LoadMeans::sled && item.kind == ItemKind::sled)
            with_plates(0, 1, plate_sums(kit, 1, 1000));
        if (e.means == LoadMeans::dumbbell_pair && item.kind == ItemKind::dumbbell && item.count >= 2)
            sums.push_back(2 * mass);
        if (e.means == LoadMeans::dumbbell_single &&
            (item.kind == ItemKind::dumbbell || item.kind == ItemKind::kettlebell))
            sums.push_back(mass);
        if (e.means == LoadMeans::ball && item.kind == ItemKind::ball)
            sums.push_back(mass);
        if (e.means == LoadMeans::column && item.kind == ItemKind::column)
            for (int step = 1; step <= 20; ++step)
                sums.push_back(*item.ratio * step * item.step->kilograms());
    }
    return sums;
}

// --- the laws
// -----------------------------------------------------------------------------------------------------

const Exercise& exercise_of(const BlockRequest& request, const std::string& key) {
    const auto found = std::find_if(request.catalogue.begin(), request.catalogue.end(),
                                    [&](const auto& e) { return e.key == key; });
    REQUIRE(found != request.catalogue.end());
    return *found;
}

bool on(const BlockRequest& request, Date day, DayKind kind) {
    return std::any_of(request.calendar.begin(), request.calendar.end(),
                       [&](const auto& c) { return c.kind == kind && c.date <= day && day <= c.last_date; });
}

bool heavy_legs(const Exercise& e) {
    return (e.part == Part::main_lift || e.part == Part::assistance) &&
           (e.region == Region::legs || e.region == Region::whole_body) && e.means != LoadMeans::band &&
           e.means != LoadMeans::body;
}

bool loads_a_painful_region(const BlockRequest& request, const Exercise& e) {
    return std::any_of(request.painful.begin(), request.painful.end(), [&](const PainBlock& row) {
        const auto named = [](const auto& list, const auto& each) {
            return std::count(list.begin(), list.end(), each) > 0;
        };
        return named(row.patterns, e.pattern) || named(row.regions, e.region) ||
               std::any_of(e.cautions.begin(), e.cautions.end(),
                           [&](const auto& key) { return named(row.cautions, key); });
    });
}

void check_line(const BlockRequest& request, const BlockLine& line, std::map<std::string, Sums>& known) {
    const Exercise& e = exercise_of(request, line.exercise);
    CHECK(line.sets >= 1);
    CHECK(line.reps >= 1);
    CHECK(line.reason.ends_with("."));
    CHECK_FALSE_MESSAGE(loads_a_painful_region(request, e), e.key);
    CHECK(whole_years(request.athlete.birth_date, request.start) >= e.youngest);
    for (const auto need : e.needs)
        CHECK(std::any_of(request.kit.items.begin(), request.kit.items.end(),
                          [&](const auto& i) { return i.kind == need; }));
    for (const auto& key : request.athlete.restrictions) {
        const bool named =
            std::find(line.overridden.begin(), line.overridden.end(), key) != line.overridden.end();
        const bool against = std::find(e.cautions.begin(), e.cautions.end(), key) != e.cautions.end();
        CHECK(named == against);
    }
    if (line.intensity)
        CHECK(*line.intensity <= 0.875 + 1e-9);
    if (!line.load)
        return;
    const double kg = line.load->kilograms();
    if (e.lightest)
        CHECK(kg >= e.lightest->kilograms() - 1e-9);
    if (e.heaviest)
        CHECK(kg <= e.heaviest->kilograms() + 1e-9);
    const auto [sums, fresh] = known.try_emplace(e.key);
    if (fresh)
        sums->second = makeable(request.kit, e);
    const bool made = std::any_of(sums->second.begin(), sums->second.end(),
                                  [&](double each) { return std::abs(each - kg) < 1e-6; });
    CHECK_MESSAGE(made, e.key << " " << kg << " kg");
    if (line.intensity && e.means != LoadMeans::ball) {
        const auto& maximum = request.maxima.at(*e.load_test);
        const double body = e.means == LoadMeans::added_plate ? request.body_mass->value : 0;
        CHECK(kg + body <= *line.intensity * e.load_share * (maximum.value - maximum.standard_error) + 1e-6);
    }
    if (e.means == LoadMeans::ball && e.part == Part::speed && !e.pattern.starts_with("rotational"))
        CHECK(line.load->pounds() <= 8 + 1e-9);
}

void check_days(const BlockRequest& request, const Block& block) {
    std::map<Date, double> minutes;
    for (const auto& line : block.lines) {
        const Exercise& e = exercise_of(request, line.exercise);
        minutes[line.date] += e.setup_minutes + line.sets * e.set_minutes;
        for (int ahead = 0; ahead <= 2; ++ahead)
            if (heavy_legs(e))
                CHECK_FALSE_MESSAGE(on(request, line.date + ahead, DayKind::start),
                                    e.key << " " << line.date.text());
        const Date first = request.start + 7 * (line.week - 1);
        CHECK((first <= line.date && line.date <= first + 6));
    }
    for (const auto& [day, sum] : minutes) {
        CHECK(sum <= request.minutes + 1e-6);
        for (const auto kind : {DayKind::game, DayKind::start, DayKind::off})
            CHECK_FALSE(on(request, day, kind));
        if (!request.weekdays.empty())
            CHECK(std::find(request.weekdays.begin(), request.weekdays.end(), day.iso_weekday()) !=
                  request.weekdays.end());
        if (whole_years(request.athlete.birth_date, request.start) < 14)
            CHECK_FALSE(minutes.contains(day + 1));
    }
}

int sets_of_week(const Block& block, int week) {
    int sets = 0;
    for (const auto& line : block.lines)
        sets += line.week == week ? line.sets : 0;
    return sets;
}

// Where nothing disturbs the weeks: main lifts kept three weeks, every fourth week about half the sets.
void check_quiet_weeks(const Block& block) {
    std::map<std::string, std::set<int>> weeks_of_main;
    for (const auto& line : block.lines)
        if (line.part == Part::main_lift)
            weeks_of_main[line.exercise].insert(line.week);
    for (const auto& [key, weeks] : weeks_of_main) {
        int run = 0, longest = 0, before = -1;
        std::vector<int> runs;
        for (const int week : weeks) {
            run = week == before + 1 ? run + 1 : 1;
            if (run == 1)
                runs.push_back(0);
            runs.back() = run;
            before = week;
            longest = std::max(longest, run);
        }
        for (const int each : runs)
            CHECK_MESSAGE(each >= 3, key);
    }
    for (int week = 4; week <= block.weeks; week += 4) {
        const double share = static_cast<double>(sets_of_week(block, week)) / sets_of_week(block, week - 1);
        CHECK(share >= 0.35);
        CHECK(share <= 0.70);
    }
}

auto line_as_tuple(const BlockLine& l) {
    return std::tuple(l.week, l.session, l.date, l.order, l.exercise, l.part, l.sets, l.reps, l.intensity,
                      l.reps_in_reserve, l.load, l.load_words, l.rest_minutes, l.purpose, l.reason,
                      l.overridden);
}

bool same(const Block& a, const Block& b) {
    return a.notes == b.notes &&
           std::equal(a.lines.begin(), a.lines.end(), b.lines.begin(), b.lines.end(),
                      [](const auto& x, const auto& y) { return line_as_tuple(x) == line_as_tuple(y); });
}

double points(const BlockRequest& request, const Block& block) {
    const auto priced = price_block(request, block);
    REQUIRE(priced);
    return priced->price.total();
}

// A search that starts from a plan never ends below it: so more minutes never lower the points, and a restriction
// never raises them. Where stand-ins near a start add to a written block, what the plan itself has cannot be read
// off it, so the calendar is quiet.
void check_more_never_worse(const BlockRequest& request, const Block& block) {
    BlockRequest wider = request;
    wider.minutes = std::min(120.0, request.minutes + 7);
    wider.previous = block;
    const auto more = plan_block(wider);
    REQUIRE(more);
    CHECK(points(wider, *more) >= points(request, block) - 1e-6);

    // Not a main lift: where none can stand none is wanted, so losing the last one loosens a limit.
    const auto other = std::find_if(block.lines.begin(), block.lines.end(),
                                    [](const BlockLine& line) { return line.part != Part::main_lift; });
    if (other == block.lines.end())
        return;
    BlockRequest narrower = request;
    narrower.own_lines.push_back({OwnLine::Word::leave_out, other->exercise});
    const auto less = plan_block(narrower);
    if (!less)
        return;
    BlockRequest again = request;
    again.previous = *less;
    const auto back = plan_block(again);
    REQUIRE(back);
    CHECK(points(request, *back) >= points(request, *less) - 1e-6);
}

// Names and units are words: other names and the other unit change no number of the block.
void check_words_change_nothing(const BlockRequest& request, const Block& block) {
    std::vector<Exercise> renamed(request.catalogue.begin(), request.catalogue.end());
    for (auto& exercise : renamed)
        exercise.name = "Name of " + exercise.name;
    BlockRequest other = request;
    other.catalogue = renamed;
    other.kit.unit = request.kit.unit == MassUnit::lb ? MassUnit::kg : MassUnit::lb;
    const auto same_again = plan_block(other);
    REQUIRE(same_again);
    REQUIRE(same_again->lines.size() == block.lines.size());
    for (std::size_t i = 0; i < block.lines.size(); ++i) {
        const BlockLine &a = block.lines[i], &b = same_again->lines[i];
        CHECK(std::tuple(a.week, a.session, a.date, a.exercise, a.sets, a.reps, a.load) ==
              std::tuple(b.week, b.session, b.date, b.exercise, b.sets, b.reps, b.load));
    }
}

void check_world(std::uint64_t seed, const ReferenceTables* real, int& planned) {
    CAPTURE(seed);
    Dice dice(seed);
    const invented::World world;
    const Case c = random_case(dice, world, real);
    const auto block = plan_block(c.request);
    if (!block) {
        CHECK(block.refusal().code == RefusalCode::no_block_fits);
        CHECK(block.refusal().sentence.size() > 20);
        return;
    }
    ++planned;
    std::map<std::string, Sums> known;
    for (const auto& line : block->lines)
        check_line(c.request, line, known);
    check_days(c.request, *block);
    if (c.quiet)
        check_quiet_weeks(*block);
    if (seed % 4 == 0) { // planned again: one in four, which leaves ./test its time
        const auto again = plan_block(c.request);
        REQUIRE(again);
        CHECK(same(*block, *again));
    }
    if (c.quiet && seed % 10 == 0) {
        check_more_never_worse(c.request, *block);
        check_words_change_nothing(c.request, *block);
    }
    for (const auto& finding :
         check_block(*block, c.request.athlete, c.request.kit, c.request.catalogue, c.request.cautions,
                     c.request.calendar, c.request.overrides, c.request.start))
        CHECK_MESSAGE(finding.severity != Severity::stops, finding.code << ": " << finding.sentence);
}

std::uint64_t athletes_of_each_kind() {
    const char* asked = std::getenv("AMENTUM_ATHLETES");
    return asked ? std::strtoull(asked, nullptr, 10) / 2 : 5'000;
}

} // namespace

TEST_CASE("every block over invented exercises obeys the laws") {
    int planned = 0;
    const auto athletes = athletes_of_each_kind();
    for (std::uint64_t seed = 1; seed <= athletes; ++seed)
        check_world(seed, nullptr, planned);
    CHECK(planned >= 0.8 * double(athletes));
}

TEST_CASE("every block over the real catalogue obeys the laws") {
    int planned = 0;
    const auto athletes = athletes_of_each_kind();
    for (std::uint64_t seed = 100'001; seed <= 100'000 + athletes; ++seed)
        check_world(seed, &real_tables(), planned);
    CHECK(planned >= 0.8 * double(athletes));
}
