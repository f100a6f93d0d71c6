// Does a note on a set speak of pain? Then the words to stop and refer are shown, and that is all that is made of it.
//
// A note is looked through for beginnings of words: pain, hurt, ache, aching, numb, tingl, sharp, swell, swollen, pinch,
// sting, burn, popped, popping (proposal of this project, no source). No number of a session depends on a note.
// What it cannot tell: whether anything is wrong; what a note means; what nobody wrote down; other languages.
//
// Example: "elbow hurts a bit" -> yes; "paint the wall" -> no.
#pragma once

#include <string_view>

namespace amentum {

bool speaks_of_pain(std::string_view note);

} // namespace amentum
