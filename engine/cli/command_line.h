// The same verbs in a terminal: every operation is a command of the same name with dashes.
//
//   amentum [--store FILE] [--today DATE] [--json] COMMAND [--field VALUE ...]
//
// Request fields are options (--sessions-per-week 3); a field called `text` may come from a file (--file FILE, or - for
// standard input); exported files go to a folder (--folder DIR). --json prints the very document the HTTP route gives.
// A mistyped command, option or name is answered with the nearest one.
//
// Exit codes: 0 done · 1 refused (the sentence is on standard error) · 2 the command line itself is wrong ·
// 3 disk or database failed.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace amentum {

class Workplace;

// What only the program itself can do: serving. Given by apps/amentum.cpp so that cli does not depend on http_api.
using ServeCommand = std::function<int(Workplace&, const std::vector<std::string>& options)>;

int run_command_line(const std::vector<std::string>& arguments, const ServeCommand& serve);

} // namespace amentum
