// 1,000 force-plate files taken in on two cores, every one durable before it answers, against two rivals in one run:
//   reading      the same files only read from the disk and copied in memory
//   measuring    the same files read, parsed and measured, but not kept
// Each file is a jump of 10 s at 1,000 Hz on two plates, as text (about 290 kB), of its own height and noise. Shown: files
// a second, the ratio to both rivals, the highest memory of the process, and how many the store holds when opened again.
// Run it by `./dev bench`, or: ninja trace_import_bench && ./bench/trace_import_bench [FILES]
#include "force_traces/measure_trace.h"
#include "operations/operation.h"
#include "operations/workplace.h"
#include "recordings/read_recording.h"
#include "store/store.h"

#include <boost/json.hpp>
#include <sys/resource.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <numbers>
#include <random>
#include <thread>

using namespace amentum;
namespace fs = std::filesystem;

namespace {

constexpr int workers = 2;
constexpr double rate = 1000, seconds = 10, g = 9.80665;

double lobe(double t, double length) {
    return t > 0 && t < length ? std::pow(std::sin(std::numbers::pi * t / length), 2) : 0;
}

double jump_force(double t, double mass, double speed) {
    const double weight = mass * g;
    t -= 2;
    if (t < 0.4)
        return weight - 0.6 * weight * lobe(t, 0.4);
    t -= 0.4;
    if (t < 0.4)
        return weight + (2 * mass * (speed + g * 0.015) + 0.6 * weight * 0.4) / 0.4 * lobe(t, 0.4);
    t -= 0.4;
    if (t < 0.03)
        return weight * (1 - t / 0.03);
    t -= 0.03;
    if (t < 2 * speed / g)
        return 0;
    t -= 2 * speed / g;
    return weight + 2 * mass * speed / 0.25 * lobe(t, 0.25);
}

std::string write_file(const fs::path& folder, int number) {
    std::mt19937_64 random(static_cast<unsigned>(number));
    std::normal_distribution<double> noise(0, 1.5);
    const double mass = 60 + number % 40, speed = 2.2 + 0.001 * (number % 700);
    const std::string name = (folder / ("jump " + std::to_string(number) + ".txt")).string();
    std::ofstream file(name);
    file << "time [s]\tLeft Fz [N]\tRight Fz [N]\n";
    char line[64];
    for (int i = 0; i < static_cast<int>(rate * seconds); ++i) {
        const double force = jump_force(i / rate, mass, speed);
        std::snprintf(line, sizeof line, "%.3f\t%.2f\t%.2f\n", i / rate, 0.51 * force + noise(random),
                      0.49 * force + noise(random));
        file << line;
    }
    return name;
}

template <class Work>
double seconds_of(const std::vector<std::string>& files, Work work) {
    const auto start = std::chrono::steady_clock::now();
    std::atomic<std::size_t> next = 0;
    std::vector<std::jthread> threads;
    for (int i = 0; i < workers; ++i)
        threads.emplace_back([&] {
            for (std::size_t at; (at = next++) < files.size();)
                work(files[at], at);
        });
    threads.clear();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

template <class Take>
void in_pieces(const std::string& name, Take take) {
    std::ifstream file(name, std::ios::binary);
    std::vector<char> piece(1 << 16);
    while (file.read(piece.data(), static_cast<std::streamsize>(piece.size())), file.gcount() > 0)
        take(std::string_view(piece.data(), static_cast<std::size_t>(file.gcount())));
}

double most_memory_mb() {
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    return static_cast<double>(used.ru_maxrss) / 1024;
}

void add_gym(Workplace& workplace) {
    const auto bring = [&](const char* kind, const char* text) {
        const auto taken =
            find_operation("import_records")
                ->run(workplace, boost::json::object{{"kind", kind}, {"text", text}, {"take", true}});
        if (!taken || !taken->at("taken").as_bool())
            std::printf("the gym was not taken\n"), std::exit(1);
    };
    bring("kit", "kit,label,item,count\nhall,floor,open_floor,1\n");
    std::string athletes = "name,birth_date,sex,throwing_hand,sport,role,level\n";
    for (int i = 0; i < 50; ++i)
        athletes += "Thrower " + std::to_string(i) + ",2004-02-01,female,right,softball,pitcher,college\n";
    bring("athletes", athletes.c_str());
}

} // namespace

int main(int argc, char** argv) {
    const int count = argc > 1 ? std::atoi(argv[1]) : 1000;
    const fs::path folder = fs::temp_directory_path() / ("amentum-bench-" + std::to_string(getpid()));
    fs::create_directories(folder);
    std::vector<std::string> files;
    for (int i = 0; i < count; ++i)
        files.push_back(write_file(folder, i));

    std::atomic<long long> sum = 0;
    const double reading = seconds_of(files, [&](const std::string& name, std::size_t) {
        in_pieces(name, [&](std::string_view piece) {
            const std::string copy(piece);
            sum += copy.back();
        });
    });
    const double measuring = seconds_of(files, [&](const std::string& name, std::size_t) {
        RecordingReader reader({});
        in_pieces(name, [&](std::string_view piece) { (void)reader.take(piece); });
        const auto recording = reader.finish();
        if (!recording ||
            !measure_trace(*recording, {TraceTest::countermovement_jump, Legs::both, {}, {}, {}}))
            std::printf("%s was refused\n", name.c_str()), std::exit(1);
    });
    const std::string store = (folder / "store.db").string();
    double keeping = 0;
    {
        Workplace workplace({store, Date::from(std::chrono::year(2026) / 6 / 1)});
        add_gym(workplace);
        const Operation* record = find_operation("record_trace");
        keeping = seconds_of(files, [&](const std::string& name, std::size_t at) {
            workplace.put_on_table(name);
            const auto kept = record->run(
                workplace, boost::json::object{{"file_name", name},
                                               {"effort", "countermovement_jump"},
                                               {"athlete", "Thrower " + std::to_string(at % 50)},
                                               {"date", "2026-05-" + std::to_string(10 + at / 50 % 20)}});
            if (!kept)
                std::printf("%s: %s\n", name.c_str(), kept.refusal().sentence.c_str()), std::exit(1);
        });
    }
    Store again(store);
    const double n = count;
    std::printf("%d force-plate files, %d workers\n", count, workers);
    std::printf("  read and copied only      %8.0f files a second\n", n / reading);
    std::printf("  read and measured         %8.0f files a second, %.1f times the time of reading\n",
                n / measuring, measuring / reading);
    std::printf("  kept, each one durable    %8.0f files a second, %.1f times the time of measuring\n",
                n / keeping, keeping / measuring);
    std::printf("  held when opened again    %8zu traces, %zu readings; integrity: %s\n",
                again.list_traces({}).size(), again.load_all().readings.size(),
                again.check_integrity().c_str());
    std::printf("  highest memory            %8.0f MB\n", most_memory_mb());
    fs::remove_all(folder);
}
