// SPDX-License-Identifier: Apache-2.0
// A rig, its devices and two stores; a seed decides all that happens. At the end everybody meets without
// faults, and what must hold is asked.
#pragma once

#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "device.hpp"

namespace snugwalk::sim {

/// What happened, so that a run of schedules can show that it met what it is for.
struct Counts {
    std::int64_t acts = 0, exchanges = 0, cutOff = 0, crashes = 0, revocations = 0, forks = 0, aside = 0,
                 photos = 0, conflicts = 0, adopted = 0, damaged = 0, strangers = 0, forged = 0,
                 tomorrows = 0;
    void add(const Counts &other);
};

/// The text by which an entry is known; empty for one of no interest.
[[nodiscard]] std::string tokenOf(const Entry &entry);

class World {
public:
    World(const std::string &folder, const std::string &empty, std::uint64_t seed);

    /// Empty when all held; else what did not, in one line each.
    [[nodiscard]] std::vector<std::string> run();
    Counts counts;

private:
    /// One value a person wrote, known by a text that is nowhere else.
    struct Written {
        std::size_t device;
        std::string type;
        bool required = true; ///< must be everywhere at the end
        bool mustBeAside = false;
        bool maybeAside = false; ///< roles changed after it: not predicted
    };
    struct Person {
        std::unique_ptr<Device> device;
        SyncRole role = SyncRole::Helper;
        bool enrolled = false;
        bool revoked = false;
        bool restored = false;
    };

    void begin();
    void step();
    void write(std::size_t who);
    void writePhoto(std::size_t who);
    void meet(std::size_t who, std::size_t store, bool faults, bool mend = false);
    void carry();
    void enroll(std::size_t who);
    void revoke(std::size_t who);
    void adopt();
    void restore(std::size_t who);
    // world_hostile.cpp
    void stranger();
    void forge(std::size_t who);
    void tomorrow(std::size_t who);
    void judgeTomorrows();
    void leave(const std::string &kind, const std::string &folder, const Hash &hash,
               const std::string &bytes);
    // world_end.cpp
    void settle();
    void judge();
    void wrong(const std::string &what) { m_wrong.push_back(what); }

    [[nodiscard]] std::set<std::string> tokensIn(Device &device, bool standing);
    [[nodiscard]] std::string sharedProjection(Device &device);

    std::string m_folder;
    std::string m_empty;
    std::uint64_t m_seed;
    Dice m_dice;
    std::vector<Person> m_people;
    MemoryStore m_stores[2];
    Id m_rig;
    std::vector<Id> m_things;
    std::map<std::string, Written> m_written;
    std::map<std::string, Hash> m_photos; ///< required photos by their token
    std::set<Hash> m_tomorrows;           ///< files that nobody here can open
    std::vector<std::string> m_wrong;
    int m_tokens = 0;
};

} // namespace snugwalk::sim
