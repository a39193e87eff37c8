// SPDX-License-Identifier: Apache-2.0
// For the kill trials: does acts one after another and says each on standard output when it has returned.
// `mark_writer write BOOK FIRST SEED` acts until it is killed; `mark_writer check BOOK` tells what is there.
#include <algorithm>
#include <cstdio>
#include <map>
#include <random>
#include <set>

#include "logbook/acts.hpp"
#include "logbook/check.hpp"
#include "logbook/entry_rows.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"
#include "support/real_catalogue.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;

namespace {

int fail(const char *step, const Error &error)
{
    std::printf("error %s: %s, %s, %s\n", step, error.what.c_str(), error.where.c_str(), error.act.c_str());
    return 1;
}

Result<Logbook> openBook(const std::string &file, const Clock &clock, IdSource &ids)
{
    return Logbook::open(file,
                         {DeviceKey::fromSeed(std::string(32, 'k')), "kill trials", &clock, &ids, true});
}

// The walk and its next line, or "-" at its end, or "none" before the first walk: where a person would go on.
std::string resumePoint(Logbook &book, const Walk &walk)
{
    if (walk.id.isNull())
        return "none";
    const auto next = nextLine(walk, marksOf(book, walk.id).value());
    return walk.id.shortText() + "/" + (next ? std::to_string(*next) : std::string("-"));
}

class Writer {
public:
    Writer(Logbook &book, long first, unsigned seed) : m_book(book), m_act(first), m_rng(seed) {}

    // One act; its number is in `by` of each of its entries.
    Status act()
    {
        m_doer.by = "act " + std::to_string(m_act);
        const Status status = step();
        if (!status)
            return status;
        std::printf("ack %ld %s\n", m_act++, resumePoint(m_book, m_walk).c_str());
        std::fflush(stdout);
        return done();
    }

private:
    int pick(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_rng); }

    Status step()
    {
        if (m_rig.id.isNull())
            return findRig();
        if (m_walk.id.isNull() || m_walk.finished)
            return findWalk();
        const auto marks = marksOf(m_book, m_walk.id).value();
        const auto next = nextLine(m_walk, marks);
        if (!next)
            return finish();
        const int kind = pick(20);
        if (kind == 0 && !marks.empty())
            return undo();
        if (kind == 1)
            return mend();
        if (kind == 2)
            return photo();
        return mark(m_walk.tape[*next], marks);
    }

    Status findRig()
    {
        const auto rigs = allRigs(m_book).value();
        m_rig = rigs.empty() ? test::tandem() : rigs.front();
        m_rig.yearly =
            kilometres(1000 + static_cast<double>(m_act)); // so that every run has something to say
        const auto saved = saveRig(m_book, m_rig, m_doer);
        if (!saved)
            return saved.error();
        m_rig.id = *saved;
        const auto open = openWalk(m_book, m_rig.id).value();
        if (open)
            m_walk = *open;
        return done();
    }

    Status findWalk()
    {
        auto started = startWalk(m_book, test::realCatalogue(), m_rig, "before_road", {}, {}, m_doer);
        if (!started)
            return started.error();
        m_walk = std::move(started).value();
        return done();
    }

    Status finish()
    {
        SNUG_TRY(finishWalk(m_book, m_walk, m_doer));
        m_walk.finished = m_book.now();
        return done();
    }

    Status undo()
    {
        const auto undone = m_book.undo(m_walk.id, m_doer.by);
        return undone ? done() : Status(undone.error());
    }

    Status mend()
    {
        Mend mend;
        mend.rig = m_rig.id;
        mend.at = m_book.now();
        mend.points = {"chains-run"};
        mend.action = "clean";
        mend.what = m_doer.by;
        const auto added = addMend(m_book, mend, m_doer);
        return added ? done() : Status(added.error());
    }

    // The bytes first, on the disk, then the entry that names them.
    Status photo()
    {
        const std::string bytes = "picture of " + m_doer.by + std::string(20000, 'p');
        Photo photo;
        photo.rig = m_rig.id;
        photo.hash = blake2b(bytes).text();
        photo.mime = "image/jpeg";
        photo.added = m_book.now();
        const std::filesystem::path folder =
            std::filesystem::path(m_book.photoFolder()) / photo.hash.substr(0, 2);
        SNUG_TRY(makeFolder(folder));
        SNUG_TRY(writeNewFile(folder / (photo.hash + ".jpg"), bytes));
        const auto added = addPhoto(m_book, photo, m_doer);
        return added ? done() : Status(added.error());
    }

    Status mark(const TapeLine &line, const std::vector<Mark> &marks)
    {
        const auto point = std::find_if(line.points.begin(), line.points.end(),
                                        [&](const std::string &p) { return findMark(marks, p) == nullptr; });
        MarkDraft draft;
        draft.point = *point;
        draft.note = m_doer.by;
        draft.state = pick(3) == 0 ? MarkState::Attention : MarkState::Pass;
        if (draft.state == MarkState::Attention) {
            FindingDraft finding;
            finding.defect = test::realCatalogue().find(*point)->defects.front();
            finding.grade = 1 + pick(5);
            finding.note = m_doer.by;
            draft.findings = {finding};
        }
        const auto marked = markPoint(m_book, test::realCatalogue(), m_rig, m_walk, draft, m_doer);
        return marked ? done() : Status(marked.error());
    }

    Logbook &m_book;
    long m_act;
    std::mt19937 m_rng;
    Doer m_doer;
    Rig m_rig;
    Walk m_walk;
};

int write(const std::string &file, long first, unsigned seed)
{
    const SystemClock clock;
    RandomIds ids;
    auto book = openBook(file, clock, ids);
    if (!book)
        return fail("open", book.error());
    Writer writer(*book, first, seed);
    for (;;) {
        const Status status = writer.act();
        if (!status)
            return fail("act", status.error());
    }
}

// An act with a finding must have all three of its entries.
void tellHalves(const std::map<std::string, std::multiset<std::string>> &acts)
{
    for (const auto &[by, types] : acts) {
        const bool undone = types.count("?undo") > 0;
        if (!undone && types.count("finding") != types.count("look"))
            std::printf("half %s\n", by.c_str());
        if (!undone && types.count("finding") > 0 && types.count("mark") != 1)
            std::printf("half %s\n", by.c_str());
    }
}

int check(const std::string &file)
{
    const SystemClock clock;
    RandomIds ids;
    auto book = openBook(file, clock, ids);
    if (!book)
        return fail("open", book.error());
    const auto report = checkLogbook(*book, true);
    if (!report)
        return fail("check", report.error());
    for (const std::string &fault : report->faults)
        std::printf("fault %s\n", fault.c_str());
    std::map<std::string, std::multiset<std::string>> acts;
    const Status read = eachStoredEntry(book->db(), [&](const StoredEntry &stored) {
        acts[stored.entry.by].insert(stored.entry.type);
        if (!stored.entry.undoes.isNull())
            acts[stored.entry.by].insert("?undo");
        return done();
    });
    if (!read)
        return fail("read", read.error());
    for (const auto &[by, types] : acts)
        std::printf("%s\n", by.c_str());
    tellHalves(acts);
    const auto rigs = allRigs(*book).value();
    for (const Rig &rig : rigs) {
        const auto walks = walksOf(*book, rig.id).value();
        for (const Walk &walk : walks)
            std::printf("at %s\n", resumePoint(*book, walk).c_str());
    }
    std::printf("entries %lld\n", static_cast<long long>(report->entries));
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    const std::string verb = argc > 1 ? argv[1] : "";
    if (verb == "write" && argc == 5)
        return write(argv[2], std::stol(argv[3]), static_cast<unsigned>(std::stoul(argv[4])));
    if (verb == "check" && argc == 3)
        return check(argv[2]);
    std::fprintf(stderr, "usage: mark_writer write BOOK FIRST SEED | mark_writer check BOOK\n");
    return 2;
}
