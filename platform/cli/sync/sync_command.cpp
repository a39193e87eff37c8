// SPDX-License-Identifier: Apache-2.0
// sync: with one store or with all, one after the other.
#include <csignal>
#include <iostream>
#include <unistd.h>

#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"
#include "device/device.hpp"
#include "stores/open_store.hpp"

namespace snugwalk::cli {
namespace {

volatile std::sig_atomic_t stopAsked = 0; // set by the signal's handler, which may do nothing else

// While it lives an interrupt ends the exchange where nothing is lost, instead of the process.
class StopOnInterrupt {
public:
    StopOnInterrupt() : m_before(std::signal(SIGINT, [](int) { stopAsked = 1; })) {}
    StopOnInterrupt(const StopOnInterrupt &) = delete;
    StopOnInterrupt &operator=(const StopOnInterrupt &) = delete;
    ~StopOnInterrupt() { std::signal(SIGINT, m_before); }

private:
    void (*m_before)(int);
};

struct SyncOptions {
    std::string store;
    std::string originals = "wanted";
    bool mend = false;
    bool progress = false;
};

// One line that is written over on a terminal, a line a step where it is asked for.
class Ticker {
public:
    Ticker(std::string store, bool asked) : m_store(std::move(store)), m_asked(asked) {}
    Ticker(const Ticker &) = delete;
    Ticker &operator=(const Ticker &) = delete;
    ~Ticker()
    {
        if (m_shown && m_isTerminal)
            std::cerr << "\r\x1b[K" << std::flush;
    }
    bool operator()(const ExchangeStep &step)
    {
        const std::string line =
            m_store + ": " + step.what + " " + std::to_string(step.done) + " of " + std::to_string(step.of);
        if (m_isTerminal)
            std::cerr << "\r\x1b[K" << line << std::flush;
        else if (m_asked)
            std::cerr << line << "\n";
        m_shown = true;
        return stopAsked == 0;
    }

private:
    std::string m_store;
    bool m_asked;
    bool m_isTerminal = isatty(STDERR_FILENO) == 1;
    bool m_shown = false;
};

std::string told(const std::string &store, const ExchangeSummary &s)
{
    std::string text = store + ": " + counted(s.entriesSent, "entry", "entries") + " sent, " +
                       std::to_string(s.entriesReceived) + " received";
    if (s.photosSent + s.photosReceived + s.thumbnailsReceived > 0)
        text += "; " + counted(s.photosSent, "photo", "photos") + " sent, " +
                counted(s.thumbnailsReceived, "thumbnail", "thumbnails") + " and " +
                counted(s.photosReceived, "original", "originals") + " received";
    text += "\n";
    const auto line = [&](std::int64_t count, const char *one, const char *many, const std::string &rest) {
        if (count > 0)
            text += "  " + counted(count, one, many) + rest + "\n";
    };
    line(s.photosLeft, "photo", "photos",
         " whose original is elsewhere: `snugwalk photo want`, or sync --originals all");
    line(s.aside, "entry", "entries", " set aside, not counted: `snugwalk aside list`");
    line(s.conflicts, "thing", "things", " that people wrote differently: `snugwalk conflict list`");
    line(s.gaps, "file of entries", "files of entries",
         " missing here and at the store; sync again with other stores");
    line(s.unopened, "file", "files",
         " kept that cannot be opened here: unknown device, newer version, or no key");
    line(s.damaged, "damaged file", "damaged files", " at the store: `snugwalk check --store " + store + "`");
    if (s.forked)
        text += "  a copy of this logbook went on elsewhere: this one goes on under a new stream, both are "
                "kept\n";
    return text;
}

Result<ExchangeSummary> exchangeWith(Session &session, const Keys &keys, const StoreRecord &record,
                                     const SyncOptions &typed)
{
    const auto secrets = keeper();
    const auto opened = openStore(*secrets, record);
    if (!opened)
        return opened.error();
    ExchangeOptions options;
    options.mend = typed.mend;
    options.originals = typed.originals == "all"    ? Originals::All
                        : typed.originals == "none" ? Originals::None
                                                    : Originals::Wanted;
    Ticker ticker(record.name, typed.progress);
    const auto summary = exchange(**session.book(), keys, *opened->store, options,
                                  [&](const ExchangeStep &step) { return ticker(step); });
    // what was published before an exchange broke off is worth handing over too
    const Status finished = opened->finish();
    if (!summary)
        return summary;
    if (!finished)
        return finished.error();
    SNUG_TRY(noteExchange(dataFolder(), record.name, {session.now().value(), countsOf(*summary)}));
    return summary;
}

Result<std::vector<StoreRecord>> chosen(const std::string &name)
{
    if (!name.empty()) {
        const auto store = storeNamed(dataFolder(), name);
        return store ? Result<std::vector<StoreRecord>>(std::vector{*store}) : store.error();
    }
    auto stores = storeList(dataFolder());
    if (stores && stores->empty())
        return Error{Errc::NotFound, "no store yet", "", "add one with `snugwalk store add`"};
    return stores;
}

Value errorJson(const Error &error)
{
    return Value::Map{
        {"code", codeName(error.code)}, {"what", error.what}, {"where", error.where}, {"do", error.act}};
}

struct Outside {
    Value::List json;
    std::string text;
};

// Rigs whose entries do not come here, or from here, because of who belongs to them: silence would look like
// success.
Result<Outside> outsideOf(Logbook &book, const Id &device, const std::vector<std::pair<Id, Hash>> &rigs)
{
    Outside outside;
    for (const auto &item : rigs) {
        const auto members = membersOf(book, item.first);
        if (!members)
            return members.error();
        const Member *me = members->find(device);
        if (me != nullptr && me->role())
            continue;
        const std::string why =
            members->members.empty()
                ? "no record of it has come yet: the owner's device syncs first, then this one"
            : me == nullptr
                ? "this device does not belong to it yet: an owner lets it in, `snugwalk device answer`"
                : "this device's part in it has ended" + (me->reason.empty() ? "" : " (" + me->reason + ")") +
                      ": what it writes stays here";
        outside.json.emplace_back(Value::Map{{"rig", item.first.text()}, {"why", why}});
        outside.text += "rig " + item.first.shortText() + ": " + why + "\n";
    }
    return outside;
}

Result<Answer> sync(Session &session, const SyncOptions &typed)
{
    const auto keys = keysOf(session);
    const auto stores = chosen(typed.store);
    if (!keys || !stores)
        return keys ? stores.error() : keys.error();
    SNUG_TRY(session.now());
    const auto shared = sharedRigs(**session.book());
    if (!shared)
        return shared.error();
    if (shared->empty())
        return Error{
            Errc::NotFound, "no rig of this logbook is shared yet", (*session.book())->file(),
            "share one with `snugwalk share RIG`, or answer an owner's offer with `snugwalk device answer`"};
    const StopOnInterrupt stopping;
    Answer answer;
    Value::List list;
    bool any = false;
    for (const StoreRecord &store : *stores) {
        const auto summary = exchangeWith(session, *keys, store, typed);
        Value::Map item = summary ? countsOf(*summary) : Value::Map{{"error", errorJson(summary.error())}};
        item["store"] = store.name;
        list.emplace_back(item);
        if (summary) {
            any = true;
            answer.text += told(store.name, *summary);
            continue;
        }
        Error error = summary.error();
        error.where = store.name + (error.where.empty() ? "" : ", " + error.where);
        if (!answer.fault)
            answer.fault = error;
        if (stopAsked != 0)
            break;
    }
    if (!any)
        return *answer.fault;
    const auto outside = outsideOf(**session.book(), keys->device.deviceId(), *shared);
    if (!outside)
        return outside.error();
    answer.text += outside->text;
    answer.json = Value::Map{{"stores", list}, {"outside", outside->json}};
    return answer;
}

} // namespace

void addSyncCommand(CLI::App &app, Registry &registry)
{
    auto typed = std::make_shared<SyncOptions>();
    CLI::App *sub = app.add_subcommand("sync", "exchange entries and photos with a store, or with all; stop "
                                               "it whenever you like, it goes on next time");
    sub->add_option("--store", typed->store, "only this one");
    sub->add_option(
           "--originals", typed->originals,
           "which originals of photos to fetch: none, wanted (by `photo want`), all; thumbnails always come")
        ->check(CLI::IsMember({"none", "wanted", "all"}));
    sub->add_flag("--mend", typed->mend,
                  "read everything of ours at the store again and replace what is damaged");
    sub->add_flag("--progress", typed->progress,
                  "a line a step on standard error; a terminal has one anyway");
    registry.add(*sub, "  snugwalk sync\n  snugwalk sync --store stick --originals all",
                 [typed](Session &s) { return sync(s, *typed); });
}

} // namespace snugwalk::cli
