#include "equipment/standard_masses.h"

namespace amentum {
namespace {

using Numbers = std::vector<double>;

Numbers steps(Numbers numbers, double to, double by) {
    while (numbers.back() + by <= to)
        numbers.push_back(numbers.back() + by);
    return numbers;
}

Numbers numbers_of(ItemKind kind, bool pounds) {
    switch (kind) {
    case ItemKind::plate:
        return pounds ? Numbers{0.25, 0.5, 0.75, 1.0, 1.25, 2.5, 5.0, 10.0, 25.0, 35.0, 45.0}
                      : Numbers{0.25, 0.5, 1.0, 1.25, 1.5, 2.0, 2.5, 5.0, 10.0, 15.0, 20.0, 25.0};
    case ItemKind::dumbbell:
        return pounds ? steps(steps({2.5}, 20, 2.5), 100, 5) : steps(steps({1}, 10, 1), 50, 2.5);
    case ItemKind::ball:
        return pounds ? steps({2}, 12, 2) : steps({1}, 6, 1);
    case ItemKind::straight_bar:
        return pounds ? Numbers{15, 35, 45} : Numbers{10, 15, 20};
    default:
        return {};
    }
}

} // namespace

std::vector<Mass> standard_masses(ItemKind kind, MassUnit unit) {
    std::vector<Mass> masses;
    for (const double x : numbers_of(kind, unit == MassUnit::lb))
        masses.push_back(unit == MassUnit::lb ? Mass::pounds(x) : Mass::kilograms(x));
    return masses;
}

} // namespace amentum
