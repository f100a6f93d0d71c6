// The joint model of a roster, errors in all variables and sessions crossed with athletes: mode and errors, seven qualities.
//   200 x 12, 60 sessions        on one thread and on all                       goal: under 1 s
//   5,000 x 20, 400 sessions     all threads                                    goal: under 60 s
//   the same a night later       one more test day of 100 athletes, from the kept fit: goal under 15 s
//   one athlete after one test   the athlete's states anew, the roster's numbers held: goal under 5 ms
// and how time grows with athletes (100 to 50,000, one pass of likelihood and gradient is what a fit is made of) and with test
// days. Without sessions it is linear in both; with them a test day costs more the more sessions its athlete was in. There is no rival program: the yardstick is the mixed model on observed values, fitted to the same rows in this run
// (mixed_model_bench has lme4), which answers another question, and wrongly.
// Wall and processor seconds; memory is the most the process ever held. `--plot FILE`: the growth as an SVG picture.
// Run it by `./dev bench`, or: ninja joint_model_bench && ./bench/joint_model_bench.
#include "inference/athlete_states.h"
#include "inference/joint_model.h"
#include "inference/random_stream.h"

#include <array>
#include <atomic>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <string>
#include <thread>

#include <sys/resource.h>

using namespace amentum;

namespace {

constexpr std::size_t predictors = 6;
constexpr std::array slope{0.9, 0.5, 1.2, 0.3, 0.0, 0.6};
const RosterPriors priors{std::vector<Estimate>(predictors, {0, 2}),
                          std::vector<Estimate>(predictors, {0, 4})};

RosterAthlete simulated_athlete(RandomStream& random, int days, const std::vector<double>& shifts) {
    std::array<double, predictors> level, own, now{};
    double velocity = 80 + 3 * random.next_normal();
    for (std::size_t k = 0; k < predictors; ++k) {
        level[k] = random.next_normal();
        own[k] = slope[k] + 0.25 * random.next_normal();
        velocity += level[k];
    }
    RosterAthlete athlete;
    const int sessions = static_cast<int>(shifts.size());
    int session = static_cast<int>(random.next_uniform() * (sessions - days));
    for (int t = 0; t < days; ++t, ++session) {
        RosterDay day{10 * session, {}};
        double v = velocity + shifts[static_cast<std::size_t>(session)] + 0.8 * random.next_normal();
        for (std::size_t k = 0; k < predictors; ++k) {
            now[k] += 0.08 * random.next_normal();
            v += own[k] * now[k];
            day.readings.push_back({static_cast<int>(k) + 1, level[k] + now[k] + 0.3 * random.next_normal()});
        }
        day.readings.push_back({0, v, 1, session});
        athlete.days.push_back(std::move(day));
    }
    return athlete;
}

RosterData simulated_roster(int athletes, int days, int sessions) {
    RandomStream random(1);
    std::vector<double> shifts;
    for (int s = 0; s < sessions; ++s)
        shifts.push_back(0.5 * random.next_normal());
    RosterData data{1 + static_cast<int>(predictors), 0, {}, 0, std::vector<int>(shifts.size(), 0)};
    for (int i = 0; i < athletes; ++i)
        data.athletes.push_back(simulated_athlete(random, days, shifts));
    return data;
}

void run_on_all(std::size_t parts, const std::function<void(std::size_t)>& part) {
    std::atomic<std::size_t> next = 0;
    std::vector<std::jthread> threads;
    for (unsigned i = 0; i < std::max(1U, std::thread::hardware_concurrency()); ++i)
        threads.emplace_back([&] {
            for (std::size_t p = next++; p < parts; p = next++)
                part(p);
        });
}

template <class Work>
double seconds_of(Work work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double processor_seconds() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec) +
           1e-6 * static_cast<double>(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec);
}

double megabytes_held() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024;
}

Result<RosterFit> timed_fit(const char* what, const RosterData& data, const FitControl& control,
                            const char* goal) {
    Result<RosterFit> fit = Refusal{};
    const double before = processor_seconds();
    const double seconds = seconds_of([&] { fit = fit_joint_model(data, priors, control); });
    std::printf("%-46s %8.2f s (%.2f of processors)   goal: %s%s\n", what, seconds,
                processor_seconds() - before, goal, fit ? "" : "   REFUSED");
    if (fit) {
        std::printf("    %d evaluations; slopes (truth 0.9 0.5 1.2 0.3 0 0.6):", fit->evaluations);
        for (const auto& each : fit->within)
            std::printf(" %.3f +- %.3f", each.value, each.standard_error);
        std::printf("; %.0f MB\n", megabytes_held());
    }
    return fit;
}

void time_night(RosterData& data, const RosterFit& fit) {
    for (std::size_t i = 0; i < 100; ++i) {
        auto& days = data.athletes[50 * i].days;
        RosterDay next = days.back();
        next.day += 10;
        for (auto& r : next.readings)
            r.session = -1;
        days.push_back(next);
    }
    (void)timed_fit("5,000 x 20 a night later, from the kept fit", data, {run_on_all, {}, &fit.mode},
                    "under 15 s");
    const RosterAthlete& athlete = data.athletes.front();
    constexpr int times = 1000;
    double sum = 0;
    const double seconds = seconds_of([&] {
        for (int i = 0; i < times; ++i)
            sum += AthleteStates(fit.mode, athlete).smoothed(athlete.days.back().day, 0).mean;
    });
    std::printf("%-46s %8.3f ms  goal: under 5 ms (%.1f)\n", "one athlete of 21 days after a new test",
                1000 * seconds / times, sum / times);
}

struct Growth {
    int athletes;
    double seconds;
};

// A pass of the search's kind: the fit is stopped after `evaluations` of them.
double seconds_a_pass(const RosterData& data) {
    constexpr int evaluations = 3;
    int told = 0;
    const FitControl few{run_on_all, [&](double) { return told++ < evaluations; }};
    return seconds_of([&] { (void)fit_joint_model(data, priors, few); }) / evaluations;
}

void write_plot(const std::string& file, const std::vector<Growth>& growth) {
    const auto x = [](double athletes) { return 60 + 200 * (std::log10(athletes) - 2); };
    const auto y = [](double seconds) { return 230 - 70 * (std::log10(seconds) + 3); };
    std::ofstream out(file);
    out << "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 280\" font-family=\"sans-serif\" "
           "font-size=\"12\">\n"
           "<title>Seconds of one pass over athletes, both logarithmic; the line has slope 1</title>\n";
    for (int power = 2; power <= 4; ++power)
        out << "<text x=\"" << x(std::pow(10, power)) << "\" y=\"250\" text-anchor=\"middle\">"
            << static_cast<int>(std::pow(10, power)) << "</text>\n";
    for (int power = -3; power <= 0; ++power)
        out << "<text x=\"52\" y=\"" << y(std::pow(10, power)) + 4 << "\" text-anchor=\"end\">"
            << std::pow(10, power) << " s</text>\n";
    const auto& middle = growth[growth.size() / 2];
    const double each = middle.seconds / middle.athletes;
    out << "<line x1=\"" << x(100) << "\" y1=\"" << y(100 * each) << "\" x2=\"" << x(50'000) << "\" y2=\""
        << y(50'000 * each) << "\" stroke=\"#888\"/>\n";
    for (const auto& [athletes, seconds] : growth)
        out << "<circle cx=\"" << x(athletes) << "\" cy=\"" << y(seconds) << "\" r=\"4\"/>\n";
    out << "<text x=\"340\" y=\"272\" text-anchor=\"middle\">athletes, 12 test days each</text>\n</svg>\n";
}

void take_sessions_out(RosterData& data) {
    data.sessions.clear();
    for (auto& athlete : data.athletes)
        for (auto& day : athlete.days)
            for (auto& r : day.readings)
                r.session = -1;
}

void time_growth(const std::string& plot) {
    std::vector<Growth> growth;
    std::printf("one pass, 12 test days, 60 sessions:   athletes   seconds   microseconds a test day\n");
    for (const int athletes : {100, 300, 1000, 3000, 10'000, 30'000, 50'000}) {
        const double seconds = seconds_a_pass(simulated_roster(athletes, 12, 60));
        growth.push_back({athletes, seconds});
        std::printf("%48d %9.4f %18.2f  %s\n", athletes, seconds, 1e6 * seconds / (athletes * 12.0),
                    std::string(static_cast<std::size_t>(10 * (std::log10(seconds) + 4)), '*').c_str());
    }
    for (const bool sessions : {false, true}) {
        std::printf("one pass, 1,000 athletes, %s days   seconds   microseconds a test day\n",
                    sessions ? "400 sessions:" : "no sessions: ");
        for (const int days : {5, 10, 20, 40, 80}) {
            RosterData data = simulated_roster(1000, days, 400);
            if (!sessions)
                take_sessions_out(data);
            const double seconds = seconds_a_pass(data);
            std::printf("%44d %9.4f %18.2f\n", days, seconds, 1e6 * seconds / (1000.0 * days));
        }
    }
    if (!plot.empty())
        write_plot(plot, growth);
}

} // namespace

int main(int count, char** arguments) {
    const std::string plot = count == 3 && std::string(arguments[1]) == "--plot" ? arguments[2] : "";
    const RosterData small = simulated_roster(200, 12, 60);
    (void)timed_fit("200 x 12, one thread", small, {}, "under 1 s");
    (void)timed_fit("200 x 12, all threads", small, {run_on_all}, "under 1 s");
    time_growth(plot);
    RosterData large = simulated_roster(5000, 20, 400);
    if (const auto fit = timed_fit("5,000 x 20, all threads", large, {run_on_all}, "under 60 s"))
        time_night(large, *fit);
    std::printf("most memory held: %.0f MB   goal: under 1,024 MB\n", megabytes_held());
}
