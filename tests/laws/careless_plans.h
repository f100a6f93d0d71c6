// A planner made careless on purpose: it draws exercises, days, loads and sets without looking at any limit. And the worlds it
// plans in: real catalogue, small random gyms, random throwers, calendars, pain and answers.
#pragma once

#include "on_disk_tables.h"

#include "guard_rails/check_block.h"

#include <algorithm>
#include <random>

namespace amentum::careless {

class Dice {
public:
    explicit Dice(std::uint64_t seed) : stream_(seed) {}
    int from(int low, int high) {
        return low + static_cast<int>(stream_() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool chance(int percent) { return from(1, 100) <= percent; }
    template <class List>
    const auto& one_of(const List& list) {
        return list[static_cast<std::size_t>(from(0, static_cast<int>(list.size()) - 1))];
    }

private:
    std::mt19937_64 stream_;
};

inline Date first_monday() {
    return *parse_date("2027-03-01", "date");
}

inline KitItem item(ItemKind kind, std::string label, int count, std::optional<Mass> mass = {}) {
    return {kind, std::move(label), count, mass, {}, {}, {}, {}};
}

// Few plates, so that what is makeable can be written out plate by plate.
inline Kit random_gym(Dice& dice) {
    Kit kit{KitId{"gym"}, "Gym", MassUnit::lb, {}};
    auto& all = kit.items;
    for (const double lb : {45.0, 25.0, 10.0})
        all.push_back(
            item(ItemKind::plate, std::to_string(lb) + " plate", dice.from(1, 4), Mass::pounds(lb)));
    for (int lb = 5; lb <= 50; lb += 15)
        all.push_back(
            item(ItemKind::dumbbell, std::to_string(lb) + " dumbbell", dice.from(1, 2), Mass::pounds(lb)));
    for (const int lb : {2, 4, 6, 8, 10, 12})
        if (dice.chance(70))
            all.push_back(item(ItemKind::ball, std::to_string(lb) + " lb ball", 1, Mass::pounds(lb)));
    const auto add = [&](KitItem each) {
        if (dice.chance(75))
            all.push_back(std::move(each));
    };
    add(item(ItemKind::straight_bar, "bar", 1, Mass::pounds(45)));
    add(item(ItemKind::hex_bar, "hex bar, low handles", 1, Mass::pounds(60)));
    add(item(ItemKind::hex_bar, "hex bar, high handles", 1, Mass::pounds(62)));
    add(item(ItemKind::safety_bar, "safety bar", 1, Mass::pounds(65)));
    add({ItemKind::column, "column", 1, {}, {}, 0.5, Mass::pounds(10), Mass::pounds(150)});
    for (const auto kind :
         {ItemKind::band, ItemKind::rack, ItemKind::bench, ItemKind::pull_up_bar, ItemKind::belt,
          ItemKind::box, ItemKind::pad, ItemKind::open_floor, ItemKind::wall_bay, ItemKind::sled})
        add(item(kind, word(kind), 1));
    all.push_back(item(ItemKind::landmine, "landmine", 1));
    return kit;
}

inline Athlete random_thrower(Dice& dice) {
    return {AthleteId{"ada"},
            "Ada",
            first_monday() - dice.from(8 * 365, 26 * 365),
            Sex::female,
            Hand::right,
            dice.chance(70) ? Sport::baseball : Sport::softball,
            dice.one_of(std::vector{Role::pitcher, Role::catcher, Role::fielder}),
            dice.one_of(std::vector{Level::youth, Level::school, Level::college, Level::amateur}),
            {},
            {},
            {},
            {},
            KitId{"gym"},
            ""};
}

struct World {
    Kit kit;
    Athlete athlete;
    Date today;
    std::vector<CalendarEntry> calendar;
    std::vector<Override> overrides;
    std::vector<PainEntry> pains;
    std::vector<PainClearance> clearances;
    std::vector<StopAnswered> answers;
    Block block;

    CareRecord care() const { return {tables_on_disk().pain_blocks, pains, clearances, answers}; }
};

inline void add_pain(Dice& dice, World& world) {
    world.pains.push_back({world.athlete.id, static_cast<int>(world.pains.size()) + 1,
                           first_monday() + dice.from(-20, 20), dice.one_of(words_of<PainRegion>).first, "",
                           "it hurts", "Kim Osei"});
    if (dice.chance(50))
        world.clearances.push_back({dice.chance(90) ? world.athlete.id : AthleteId{"ben"},
                                    world.pains.back().number, first_monday() + dice.from(-20, 20),
                                    "Dr. Ada Fenwick", "Kim Osei", first_monday(), "no limits"});
}

inline BlockLine careless_line(Dice& dice, const World& world, int order) {
    const auto& exercise = dice.one_of(tables_on_disk().exercises);
    const int week = dice.from(1, 4);
    const int session = dice.from(1, 3);
    // Mostly Monday, Wednesday, Friday; now and then any day at all.
    const Date usual = world.block.start + 7 * (week - 1) + 2 * (session - 1);
    BlockLine line{week,
                   session,
                   dice.chance(92) ? usual : world.block.start + dice.from(-2, 30),
                   order,
                   dice.chance(98) ? exercise.key : "dreamt_up",
                   exercise.part,
                   dice.chance(97) ? dice.from(1, 5) : 0,
                   dice.chance(97) ? dice.from(1, 10) : 0,
                   dice.chance(40) ? std::optional(dice.from(50, 100) / 100.0) : std::nullopt,
                   {},
                   {},
                   "",
                   2,
                   "",
                   "",
                   {}};
    if (dice.chance(70))
        line.load = Mass::pounds(dice.from(2, 60) * (dice.chance(50) ? 1.0 : 2.5));
    if (dice.chance(5) && !exercise.cautions.empty())
        line.overridden = {exercise.cautions.front()};
    return line;
}

inline World careless_world(std::uint64_t seed) {
    Dice dice(seed);
    Kit kit = random_gym(dice);
    Athlete athlete = random_thrower(dice);
    const Block block{BlockId{"ada-block"},
                      athlete.id,
                      kit.id,
                      first_monday(),
                      4,
                      3,
                      static_cast<double>(dice.from(20, 90)),
                      {},
                      {},
                      ""};
    World world{std::move(kit), std::move(athlete), first_monday() + dice.from(-3, 10), {}, {}, {}, {}, {},
                block};
    const auto& cautions = tables_on_disk().cautions;
    for (const auto& caution : cautions)
        if (dice.chance(10))
            world.athlete.restrictions.push_back(caution.key);
    for (int i = dice.from(0, 6); i > 0; --i) {
        const Date first = first_monday() + dice.from(0, 30);
        world.calendar.push_back({dice.chance(90) ? world.athlete.id : AthleteId{"ben"}, first,
                                  first + dice.from(0, 2), dice.one_of(words_of<DayKind>).first, ""});
    }
    for (int i = dice.from(0, 3) - 1; i > 0; --i)
        add_pain(dice, world);
    for (int order = 1, lines = dice.from(1, 12); order <= lines; ++order)
        world.block.lines.push_back(careless_line(dice, world, order));
    for (const auto& line : world.block.lines)
        for (const auto& exercise : tables_on_disk().exercises)
            if (exercise.key == line.exercise)
                for (const auto& caution : exercise.cautions)
                    if (dice.chance(15))
                        world.overrides.push_back({world.athlete.id, line.exercise, caution,
                                                   dice.chance(80) ? "agreed with the clinic" : "why not",
                                                   "Rui", world.today + dice.from(-5, 1)});
    for (const auto* code : {"open_pain", "session_on_taken_day", "heavy_legs_before_start", "too_long",
                             "too_young", "load_not_makeable", "two_sessions_one_day"})
        if (dice.chance(60))
            for (const auto& line : world.block.lines)
                if (dice.chance(30))
                    world.answers.push_back({world.athlete.id, code, line.date,
                                             dice.chance(70) ? "the head coach asked for it" : "    ok    ",
                                             dice.chance(90) ? "Rui" : "", world.today + dice.from(-5, 1)});
    return world;
}

} // namespace amentum::careless
