#include "reports/check_claims.h"

#include <algorithm>
#include <cctype>
#include <regex>

namespace amentum {
namespace {

std::vector<std::string> sentences_of(std::string_view text) {
    std::vector<std::string> sentences{""};
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool end_of_line = text[i] == '\n';
        const bool empty_line = end_of_line && i + 1 < text.size() && text[i + 1] == '\n';
        sentences.back() += end_of_line ? ' ' : text[i];
        const bool stop = (text[i] == '.' || text[i] == '?' || text[i] == '!') &&
                          (i + 1 == text.size() || std::isspace(static_cast<unsigned char>(text[i + 1])) ||
                           text[i + 1] == '*');
        if (stop || empty_line)
            sentences.emplace_back();
    }
    return sentences;
}

bool holds(const std::string& sentence, const std::regex& words) {
    return std::regex_search(sentence, words);
}

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" *|#-"), last = text.find_last_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, last - first + 1);
}

} // namespace

std::vector<std::string> check_claims(std::string_view text) {
    const auto flags = std::regex::icase | std::regex::ECMAScript;
    static const std::regex claim(
        "\\b(causes?|caused|causing|proves?|proven|proved|clearly|clear "
        "(effect|gain|loss|change|improvement|difference|benefit|verdict|outcome|result))\\b",
        flags);
    static const std::regex denial("\\b(not|never|no|nothing|nobody|cannot|without|nor|little|n't)\\b",
                                   flags);
    static const std::regex open_question("cannot tell", flags);
    std::vector<std::string> found;
    std::string before;
    for (const auto& sentence : sentences_of(text)) {
        if (holds(sentence, claim) && !holds(sentence, denial) && !holds(before, open_question))
            found.push_back(trimmed(sentence));
        before = sentence;
    }
    return found;
}

} // namespace amentum
