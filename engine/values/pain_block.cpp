#include "values/pain_block.h"

#include <algorithm>

namespace amentum {
namespace {

template <class T>
bool holds(const std::vector<T>& list, const T& each) {
    return std::find(list.begin(), list.end(), each) != list.end();
}

} // namespace

bool blocks(const PainBlock& row, const Exercise& exercise) {
    return holds(row.patterns, exercise.pattern) || holds(row.regions, exercise.region) ||
           std::any_of(exercise.cautions.begin(), exercise.cautions.end(),
                       [&](const auto& key) { return holds(row.cautions, key); });
}

} // namespace amentum
