// 200 throwers planned at once, as plan_squad does it overnight: seconds on all cores, seconds of the longest look meanwhile,
// memory. No rival: nothing else of this kind is known to us that could be asked the same. The aim is below 10 minutes.
//
// The throwers are the demo facility's 36, made from six seeds, in one store on the disk. Before it is timed the roster's model
// is fitted, as a night would; its time is said apart. Ten of the blocks are planned again one at a time and must be the same.
// Run it by `./dev bench`, or: ninja squad_bench && ./bench/squad_bench [throwers]
#include "demo_facility/demo_facility.h"
#include "operations/inside/inside.h"
#include "operations/plan_squad.h"

#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <thread>

using namespace amentum;

namespace {

using Clock = std::chrono::steady_clock;
const Date today = Date::from(std::chrono::year(2026) / 6 / 1);
constexpr int of_one_seed = 36;

double seconds_since(Clock::time_point begun) {
    return std::chrono::duration<double>(Clock::now() - begun).count();
}

double peak_megabytes() {
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    return static_cast<double>(used.ru_maxrss) / 1024;
}

// The facility of one seed under names of its own.
RecordSet renamed(RecordSet records, int seed) {
    const std::string mark = "-" + std::to_string(seed);
    const auto own = [&](auto& entries) {
        for (auto& each : entries)
            each.athlete.text += mark;
    };
    for (auto& kit : records.kits)
        kit.id.text += mark;
    for (auto& athlete : records.athletes) {
        athlete.id.text += mark;
        athlete.name += " " + std::to_string(seed);
        athlete.kit.text += mark;
    }
    own(records.readings);
    own(records.throws);
    own(records.calendar);
    own(records.sets);
    own(records.overrides);
    own(records.teams);
    own(records.pains);
    own(records.clearances);
    own(records.throw_steps);
    own(records.stops_answered);
    for (auto& set : records.sets)
        set.key += mark;
    records.blocks.clear();
    if (seed > 1) {
        records.facility.reset();
        records.prior_edits.clear();
        records.pitch_tables.clear();
    }
    return records;
}

PlanSquadAnswer asked(Workplace& workplace, const PlanSquadRequest& request) {
    const auto answer = plan_squad(workplace, request);
    if (!answer) {
        std::printf("refused: %s\n", answer.refusal().sentence.c_str());
        std::exit(1);
    }
    return *answer;
}

std::string lines_of(Workplace& workplace, const std::string& id) {
    const Block block = workplace.inside().store.load_block({id}).value();
    std::string text;
    for (const auto& line : block.lines)
        text += std::to_string(line.week) + line.exercise + std::to_string(line.sets) + line.load_words +
                line.reason;
    return text;
}

} // namespace

int main(int count, char** arguments) {
    const std::size_t throwers = count > 1 ? static_cast<std::size_t>(std::atoi(arguments[1])) : 200;
    const auto folder = std::filesystem::temp_directory_path() / ("squad_bench_" + std::to_string(getpid()));
    std::filesystem::remove_all(folder);
    std::filesystem::create_directory(folder);
    Workplace workplace({(folder / "gym.store").string(), today});
    for (int seed = 1; (seed - 1) * of_one_seed < static_cast<int>(throwers); ++seed)
        workplace.inside().store.save_records(
            renamed(make_demo_facility(static_cast<std::uint64_t>(seed), today).records, seed));
    PlanSquadRequest request{"begin", "2026-06-08", {}, {}, {}, {}, {}, false};
    for (const auto& athlete : workplace.inside().view()->records.athletes)
        if (request.athletes.size() < throwers)
            request.athletes.push_back(athlete.id.text);
    auto begun = Clock::now();
    workplace.inside().roster_model();
    std::printf("%zu throwers; the roster's model fitted in %.1f s\n", throwers, seconds_since(begun));

    begun = Clock::now();
    asked(workplace, request);
    double longest_look = 0;
    for (;;) {
        const auto looked = Clock::now();
        const bool running = asked(workplace, {"look", {}, {}, {}, {}, {}, {}, {}}).state == "running";
        longest_look = std::max(longest_look, seconds_since(looked));
        if (!running)
            break;
        std::this_thread::sleep_for(std::chrono::milliseconds(100));
    }
    const double seconds = seconds_since(begun);
    const auto done = asked(workplace, {"look", {}, {}, {}, {}, {}, {}, {}});
    std::printf("%u threads: %.1f s, %.2f s a thrower; %s\n", std::thread::hardware_concurrency(), seconds,
                seconds / static_cast<double>(throwers), done.words.c_str());
    std::printf("longest look meanwhile %.3f s; peak memory %.0f MB; store %.1f MB\n", longest_look,
                peak_megabytes(),
                static_cast<double>(std::filesystem::file_size(folder / "gym.store")) / 1e6);
    for (const auto& line : done.lines)
        if (line.outcome == "refused")
            std::printf("  refused: %s: %s\n", line.name.c_str(), line.words.c_str());

    int other = 0, again = 0;
    for (const auto& line : done.lines)
        if (line.outcome == "planned" && again < 10) {
            const auto before = lines_of(workplace, line.block);
            PlanSquadRequest alone = request;
            alone.athletes = {line.athlete};
            alone.wait = true;
            asked(workplace, alone);
            other += lines_of(workplace, line.block) != before;
            ++again;
        }
    std::printf("%d planned again alone: %d differ\n", again, other);
    std::filesystem::remove_all(folder);
    return other == 0 && seconds < 600 ? 0 : 1;
}
