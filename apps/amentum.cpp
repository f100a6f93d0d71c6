// The one program: command line and server.
#include "cli/command_line.h"
#include "http_api/server.h"
#include "values/shortest_decimal.h"

#include <iostream>

namespace {

using namespace amentum;

int serve_here(Workplace& workplace, const std::vector<std::string>& options) {
    Serving serving;
    for (std::size_t i = 0; i + 1 < options.size(); i += 2) {
        const auto& text = options[i + 1];
        const auto number = parse_number(text).value_or(-1);
        if (options[i] == "--address")
            serving.address = text;
        else if (options[i] == "--pages")
            serving.pages_folder = text;
        else if (options[i] == "--port" && number >= 0 && number <= 65535)
            serving.port = static_cast<std::uint16_t>(number);
        else if (options[i] == "--workers" && number >= 1 && number <= 64)
            serving.workers = static_cast<int>(number);
        else {
            std::cerr << options[i] << " is " << text << ", but must be "
                      << (options[i] == "--port" ? "0 to 65535" : "1 to 64") << ".\n";
            return 2;
        }
    }
    serving.when_ready = [](const std::string& url) { std::cout << "Serving on " << url << std::endl; };
    const auto served = serve(workplace, serving);
    if (served)
        return 0;
    std::cerr << served.refusal().sentence << "\n";
    return 1;
}

} // namespace

int main(int count, char** words) {
    return amentum::run_command_line(std::vector<std::string>(words + 1, words + count), serve_here);
}
