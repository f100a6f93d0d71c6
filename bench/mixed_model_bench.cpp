// Mixed models of a roster of 5,000 athletes with 20 test days and 6 predictors:
//   ours     fit_mixed_model, from sufficient statistics with an analytic gradient
//   rival    lme4 of R (mixed_model.R beside this file), on the very same rows, in the same run, one thread
// Processor seconds of one fit each, and the criterion both minimise: ours must not be above the rival's by more than 0.001.
// Run it by `./dev bench`, or: ninja mixed_model_bench && ./bench/mixed_model_bench. Without Rscript and lme4 it says so.
#include "inference/mixed_model.h"
#include "inference/random_stream.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

using namespace amentum;

namespace {

constexpr std::size_t predictors = 6;
constexpr std::array slope{0.9, 0.5, 1.2, 0.3, 0.0, 0.6};

struct Row {
    int id, session, day;
    double v;
    std::array<double, predictors> x;
};

std::vector<Row> roster(int athletes, int days, int sessions, std::uint64_t seed) {
    RandomStream random(seed);
    std::vector<double> of_session;
    for (int s = 0; s < sessions; ++s)
        of_session.push_back(0.5 * random.next_normal());
    std::vector<Row> rows;
    for (int i = 0; i < athletes; ++i) {
        std::array<double, predictors> level, own, now{};
        double velocity = 80 + 3 * random.next_normal();
        for (std::size_t k = 0; k < predictors; ++k) {
            level[k] = random.next_normal();
            own[k] = slope[k] + 0.25 * random.next_normal();
            velocity += level[k];
        }
        int session = static_cast<int>(random.next_uniform() * (sessions - days));
        for (int t = 0; t < days; ++t, ++session) {
            Row row{i, session, 30 * session, velocity + of_session[static_cast<std::size_t>(session)], {}};
            for (std::size_t k = 0; k < predictors; ++k) {
                now[k] += 0.1 * random.next_normal();
                row.v += own[k] * now[k];
                row.x[k] = level[k] + now[k] + 0.3 * random.next_normal();
            }
            row.v += 0.8 * random.next_normal();
            rows.push_back(row);
        }
    }
    return rows;
}

// Predictors as within and between parts, each athlete's rows together.
std::vector<std::array<double, 2 * predictors>> centred(const std::vector<Row>& rows, std::size_t days) {
    std::vector<std::array<double, 2 * predictors>> parts(rows.size());
    for (std::size_t first = 0; first < rows.size(); first += days)
        for (std::size_t k = 0; k < predictors; ++k) {
            double mean = 0;
            for (std::size_t t = 0; t < days; ++t)
                mean += rows[first + t].x[k] / static_cast<double>(days);
            for (std::size_t t = 0; t < days; ++t) {
                parts[first + t][k] = rows[first + t].x[k] - mean;
                parts[first + t][predictors + k] = mean;
            }
        }
    return parts;
}

double processor_seconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

struct Timed {
    double seconds, criterion;
};

Timed ours(const std::string& model, const std::vector<Row>& rows,
           const std::vector<std::array<double, 2 * predictors>>& parts) {
    const double start = processor_seconds();
    const bool slopes = model.starts_with("slopes"), sessions = model.ends_with("session");
    MixedRows mixed{1 + 2 * static_cast<int>(predictors),
                    slopes ? 1 + static_cast<int>(predictors) : 1,
                    {},
                    {},
                    {},
                    {},
                    std::vector<std::vector<int>>(sessions ? 1 : 0)};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        mixed.y.push_back(rows[i].v);
        mixed.X.push_back(1);
        mixed.X.insert(mixed.X.end(), parts[i].begin(), parts[i].end());
        mixed.Z.push_back(1);
        if (slopes)
            mixed.Z.insert(mixed.Z.end(), parts[i].begin(), parts[i].begin() + predictors);
        mixed.group.push_back(rows[i].id);
        if (sessions)
            mixed.crossed[0].push_back(rows[i].session);
    }
    const auto fit = fit_mixed_model(mixed, RandomShape::diagonal, Likelihood::restricted);
    return {processor_seconds() - start, fit ? fit->criterion : NAN};
}

std::map<std::string, Timed> rival(const std::vector<Row>& rows,
                                   const std::vector<std::array<double, 2 * predictors>>& parts) {
    const std::string name = "/tmp/amentum_mixed_model_bench.csv";
    {
        std::ofstream file(name);
        file.precision(17);
        file << "id,session,v,w1,w2,w3,w4,w5,w6,b1,b2,b3,b4,b5,b6\n";
        for (std::size_t i = 0; i < rows.size(); ++i) {
            file << rows[i].id << ',' << rows[i].session << ',' << rows[i].v;
            for (const double part : parts[i])
                file << ',' << part;
            file << '\n';
        }
    }
    std::map<std::string, Timed> answers;
    const std::string command = std::string("OPENBLAS_NUM_THREADS=1 Rscript ") + AMENTUM_SOURCE_DIR +
                                "/bench/mixed_model.R " + name + " 2>/dev/null";
    if (FILE* pipe = popen(command.c_str(), "r")) {
        std::array<char, 256> line;
        while (std::fgets(line.data(), line.size(), pipe)) {
            std::istringstream words(line.data());
            std::string model;
            Timed timed{};
            if (words >> model >> timed.seconds >> timed.criterion)
                answers[model] = timed;
        }
        pclose(pipe);
    }
    std::remove(name.c_str());
    return answers;
}

} // namespace

int main() {
    constexpr int days = 20;
    const auto rows = roster(5000, days, 400, 1);
    const auto parts = centred(rows, days);
    const auto lme4 = rival(rows, parts);
    if (lme4.empty())
        std::printf("SKIPPED: Rscript with lme4 (r-cran-lme4) is not installed; ours alone\n");
    std::printf("processor seconds          ours     lme4   lme4/ours   criterion ours - lme4\n");
    for (const std::string model : {"level", "level_session", "slopes", "slopes_session"}) {
        const Timed mine = ours(model, rows, parts);
        const auto theirs = lme4.find(model);
        if (theirs == lme4.end())
            std::printf("%-20s %10.3f\n", model.c_str(), mine.seconds);
        else
            std::printf("%-20s %10.3f %8.2f %9.1fx %18.5f%s\n", model.c_str(), mine.seconds,
                        theirs->second.seconds, theirs->second.seconds / mine.seconds,
                        mine.criterion - theirs->second.criterion, model == "slopes" ? "   (goal: 8x)" : "");
    }
}
