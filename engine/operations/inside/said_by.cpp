#include "operations/inside/said_by.h"

#include "operations/inside/entry_fields.h"
#include "values/letters.h"

namespace amentum {
namespace {

constexpr std::size_t shortest_name = 3, longest_name = 120, longest_reason = 1000;

} // namespace

Result<std::string> person_given(const std::string& field, const std::string& given,
                                 const std::string& what) {
    const std::string name = trimmed(given);
    if (name.empty())
        return refuse_missing(field, what + ", by name");
    if (name.size() < shortest_name || name.size() > longest_name)
        return Refusal{RefusalCode::out_of_range, "Please give the whole name: " + what + ".", field, given,
                       "3 to 120 characters"};
    return name;
}

Result<std::string> reason_given(const std::string& field, const std::string& given) {
    const std::string reason = trimmed(given);
    if (letters_in(reason) < shortest_reason || reason.size() > longest_reason)
        return Refusal{RefusalCode::missing_field, "Please say why, in a sentence: the reason is kept.",
                       field, given, "10 letters to 1000 characters"};
    return reason;
}

} // namespace amentum
