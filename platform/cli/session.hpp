// SPDX-License-Identifier: Apache-2.0
// What one run of the command line shares: its options, its logbook, its clock.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/time.hpp"
#include "base/units.hpp"
#include "base/value.hpp"
#include "catalogue/texts.hpp"
#include "data/product_world.hpp"
#include "keys/hash.hpp"
#include "logbook/acts.hpp"
#include "logbook/image_codec.hpp"
#include "logbook/logbook.hpp"

namespace snugwalk::cli {

/// Options that stand before the command.
struct Globals {
    std::string book;
    bool json = false;
    std::string units = "si";
    std::string language = "en";
    std::string rig;   ///< name or id; empty when there is only one
    std::string by;    ///< who does it
    std::string at;    ///< RFC 3339; empty for now
    std::string where; ///< "lat, lon" or "lat, lon, altitude"
};

/// What a command has to say: `text` for people, `json` for programs. `fault` is what went wrong beside what
/// was done, told after the answer and in the exit code.
struct Answer {
    Value json;
    std::string text;
    std::optional<Error> fault = std::nullopt;
};

class Session {
public:
    explicit Session(const Globals &globals) : m_globals(globals) {}

    /// The logbook, opened on first use. With `create`, made when missing.
    [[nodiscard]] Result<Logbook *> book(bool create = false);
    /// The rig named by --rig, or the only one. From then on `catalogue` and `texts` are its own.
    [[nodiscard]] Result<Rig> rig();
    /// The catalogue with the owner's own points, hidden ones and intervals; the product's before `rig`.
    [[nodiscard]] const Catalogue &catalogue() const;
    /// The same for a rig known by its id, such as that of a walk named by its id.
    [[nodiscard]] Status takeOwn(const Id &rig);
    /// The rig's unfinished walk; `NotFound` tells to start one.
    [[nodiscard]] Result<Walk> openWalk();
    /// Who, when and where, from the options.
    [[nodiscard]] Result<Doer> doer() const;
    /// --at, or now.
    [[nodiscard]] Result<LocalTime> now() const;

    [[nodiscard]] UnitSystem units() const;
    [[nodiscard]] const Texts &texts();
    [[nodiscard]] const ImageCodec &codec() const;
    /// Climate and coast, read on first use. A table that is missing or broken stops nothing: what it would
    /// tell counts as the reference, and `worldFaults` says so.
    [[nodiscard]] const World &world() { return productWorld().world; }
    [[nodiscard]] const std::vector<Error> &worldFaults() { return productWorld().faults; }
    [[nodiscard]] const Globals &globals() const { return m_globals; }

private:
    [[nodiscard]] Result<Rig> findRig();
    [[nodiscard]] const ProductWorld &productWorld();
    const Globals &m_globals;
    SystemClock m_clock;
    RandomIds m_ids;
    std::unique_ptr<Logbook> m_book;
    std::unique_ptr<Texts> m_texts;
    std::optional<Catalogue> m_catalogue; ///< only where the owner changed something
    std::optional<ProductWorld> m_world;
};

using Command = std::function<Result<Answer>(Session &)>;

/// Finding a thing by the beginning of its id, as people type it.
[[nodiscard]] Result<Id> idOf(Logbook &book, const char *type, const std::string &typed);

} // namespace snugwalk::cli
