// Base64 against the vectors printed in RFC 4648, section 10, and against what must be refused.
#include "operations/inside/base64.h"

#include <doctest/doctest.h>

#include <random>
#include <utility>

using namespace amentum;

TEST_CASE("the vectors of RFC 4648") {
    const std::pair<const char*, const char*> vectors[] = {{"", ""},
                                                           {"f", "Zg=="},
                                                           {"fo", "Zm8="},
                                                           {"foo", "Zm9v"},
                                                           {"foob", "Zm9vYg=="},
                                                           {"fooba", "Zm9vYmE="},
                                                           {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, text] : vectors) {
        CHECK(to_base64(bytes) == text);
        CHECK(from_base64(text) == std::string(bytes));
    }
}

TEST_CASE("what is not base64 is refused, not guessed") {
    for (const char* text : {"Zg=", "Zg", "Z", "Zm9v!A==", "Zm=v", "====", "Zh==", "Zm9=", "Zm 9v"})
        CHECK_FALSE(from_base64(text));
}

TEST_CASE("any bytes come back") {
    std::mt19937 random(4);
    for (std::size_t length = 0; length < 300; ++length) {
        std::string bytes(length, '\0');
        for (auto& c : bytes)
            c = static_cast<char>(random());
        CHECK(from_base64(to_base64(bytes)) == bytes);
    }
}
