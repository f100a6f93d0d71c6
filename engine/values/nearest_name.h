// Which of the known names did the person mean? Used in every "did you mean ...?".
//
// Levenshtein distance with case folded (insert, delete, replace each cost 1) [Levenshtein1966].
// A name is offered only when at most a third of its letters differ; otherwise nothing is offered.
// What it cannot tell: names that mean the same but are spelled otherwise.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace amentum {

std::size_t edit_distance(std::string_view a, std::string_view b);
std::optional<std::string> nearest_name(std::string_view given, std::span<const std::string> known);

} // namespace amentum
