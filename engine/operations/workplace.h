// Where operations happen: one open store, the reference tables built into the program, and today's date.
//
// Opaque on purpose: only the operations module sees the store. One Workplace may be used by several threads.
// Throws std::runtime_error with a plain sentence when the store cannot be opened.
#pragma once

#include "values/calendar_date.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace amentum {

class Workplace {
public:
    struct Opening {
        std::string store_file;         // made when absent; ":memory:" for a store that is forgotten
        std::optional<Date> today = {}; // fixed for reproducible answers; left out, the computer's own day
    };
    explicit Workplace(const Opening& opening);
    ~Workplace();
    Workplace(const Workplace&) = delete;
    Workplace& operator=(const Workplace&) = delete;

    // From now on operations may read this file from the disk, by this very name. For command lines only.
    void put_on_table(const std::string& file_name);

    // Told how far a long calculation is, 0 to 1, from its thread. For a command line that shows it.
    void tell_progress_to(std::function<void(double share)> listener);

    struct Inside;
    Inside& inside() { return *inside_; }

private:
    std::unique_ptr<Inside> inside_;
};

} // namespace amentum
