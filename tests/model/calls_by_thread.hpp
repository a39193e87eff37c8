// SPDX-License-Identifier: Apache-2.0
// Which thread calls for a file, the database or a picture. The program that links this stands in front of
// the libraries' own functions, counts, and goes on to them; what Qt, SQLite or the standard library calls
// on its own is counted as well.
#pragma once

#include <string>
#include <vector>

namespace snugwalk::test {

struct Calls {
    std::vector<std::string> files;    ///< function and path
    std::vector<std::string> database; ///< function
    std::vector<std::string> pictures; ///< function of the decoder or encoder

    [[nodiscard]] bool none() const { return files.empty() && database.empty() && pictures.empty(); }
};

/// Counts from construction to `take`: the calls of the thread that made it, and those of all others.
class CallWatch {
public:
    CallWatch();
    ~CallWatch();
    CallWatch(const CallWatch &) = delete;
    CallWatch &operator=(const CallWatch &) = delete;

    struct Seen {
        Calls here;
        Calls elsewhere;
    };
    /// Ends the counting.
    [[nodiscard]] Seen take();
};

} // namespace snugwalk::test
