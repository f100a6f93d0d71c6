// Which sentences of a text claim more than records can say?
//
// Found: "causes", "caused by", "proves", "proven" and "clearly" anywhere, and "clear" before a word for an effect ("clear
// gain"). Excused: a sentence that denies it ("never causes", "it proves nothing", "no clear gain"), and one that follows
// "cannot tell", as in "What it cannot tell. Causes."
// Texts: plain, or markdown. Sentences end with a full stop, a question mark, a colon before a line's end, or an empty line.
// What it cannot tell: a claim in other words.
//
// Example: check_claims("Lifting causes speed. It never causes pain.") is {"Lifting causes speed."}.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace amentum {

std::vector<std::string> check_claims(std::string_view text);

} // namespace amentum
