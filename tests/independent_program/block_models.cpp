// Writes 50 models of random blocks in the LP file format, with what Clp and CBC say of them, for block_models.mjs to ask
// another solver: half of them bounds of blocks as large as real ones, half whole small blocks.
// Run: block_models FOLDER
#include "planning/inside/branch_and_bound.h"
#include "planning/tests/random_problem.h"
#include "values/shortest_decimal.h"

#include <cstdio>
#include <fstream>

using namespace amentum;
using namespace amentum::invented;

namespace {

RandomProblem large(int number) {
    RandomProblem of{81 + 2 * number, 3 + number % 3, 1 + number % 3};
    of.room = number % 2 ? Room::tight : Room::loose;
    of.seed = static_cast<std::uint64_t>(number);
    of.starts = number % 3 == 0;
    of.least_doses = number % 4;
    of.previous = number % 5 == 0;
    return of;
}

BlockProblem small(int number) {
    RandomProblem of{12, 2, 1 + number % 2};
    of.room = Room::tight;
    of.seed = static_cast<std::uint64_t>(100 + number);
    of.qualities = 3;
    of.starts = number % 3 == 0;
    of.pins = number % 2;
    of.bars = number % 3;
    of.least_doses = number % 2;
    BlockProblem problem = random_problem(of);
    if (number % 6 == 5)
        problem.limits.minutes = 4; // too few for any main lift
    return problem;
}

// "bound_07 98.5 1e-6": name, points without the constant (the format has none), or "none"; and what may differ.
bool write_model(const std::string& folder, std::ofstream& answers, const std::string& name,
                 const LinearModel& model, const LinearAnswer& answer, const char* may_differ) {
    std::ofstream(folder + "/" + name + ".lp") << linear_model_text(model);
    if (answer.outcome != Outcome::best && answer.outcome != Outcome::none)
        return false;
    answers << name << " "
            << (answer.outcome == Outcome::none ? "none" : format_shortest(answer.points - model.constant))
            << " " << may_differ << "\n";
    return true;
}

} // namespace

int main(int count, char** given) {
    if (count != 2)
        return std::puts("block_models FOLDER"), 2;
    const std::string folder = given[1];
    std::ofstream answers(folder + "/answers.txt");
    for (int number = 0; number < 25; ++number) {
        const std::string two_digits = (number < 10 ? "0" : "") + std::to_string(number);
        LinearModel relaxed = linear_model(random_problem(large(number)));
        for (auto& column : relaxed.columns)
            column.whole = false;
        const LinearModel whole = linear_model(small(number));
        if (!write_model(folder, answers, "bound_" + two_digits, relaxed, solve_relaxed(relaxed), "1e-6") ||
            !write_model(folder, answers, "whole_" + two_digits, whole, solve_whole(whole, {100'000}),
                         "1e-4"))
            return std::printf("number %d was not solved to its end\n", number), 1;
    }
    return 0;
}
