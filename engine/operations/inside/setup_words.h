// What a solved set-up says: the card at the rack, the drawing as text, sentences and cautions.
#pragma once

#include "body_mechanics/search_setup.h"
#include "operations/inside/setup_answer.h"

namespace amentum {

std::string share_in_words(const SolvedHere&);
std::string drawing_in_words(const SolvedHere&);
std::vector<std::string> rack_card(const SolvedHere&);
std::vector<std::string> setup_sentences(const SolvedHere&);
std::vector<std::string> setup_cautions(const SolvedHere&, const MotionLimits&);
std::vector<std::string> setup_sources(const SolvedHere&);

inline constexpr const char* setup_cannot_tell = "Cannot tell: muscle forces, anything sideways, impact or "
                                                 "speed. These moments were never compared with a "
                                                 "laboratory's.";

} // namespace amentum
