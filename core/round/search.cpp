// SPDX-License-Identifier: Apache-2.0
// Words into a table of SQLite's full-text search, and out.
#include "round/search.hpp"

#include <array>

#include "base/text.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

constexpr std::array kinds = {HitKind::Point, HitKind::Finding, HitKind::Mark, HitKind::Mend,
                              HitKind::Walk,  HitKind::Trip,    HitKind::Stay, HitKind::Happening};

// What people write is kept as typed, what the catalogue says as it says it in the language at hand.
class Filler {
public:
    Filler(Statement &insert, const Catalogue &catalogue, const Texts &texts)
        : m_insert(insert), m_catalogue(catalogue), m_texts(texts)
    {}

    Status fill(const RigHistory &history)
    {
        for (const Point &point : m_catalogue.points()) {
            const PointText text = m_texts.point(point.slug);
            SNUG_TRY(put(HitKind::Point, point.slug, text.title, text.look + "\n" + text.pass, std::nullopt));
        }
        for (const FindingHistory &one : history.findings)
            SNUG_TRY(putFinding(one));
        for (const WalkRecord &one : history.walks)
            SNUG_TRY(putWalk(one));
        for (const Mend &one : history.mends)
            SNUG_TRY(putMend(one, history));
        for (const Trip &one : history.trips)
            SNUG_TRY(
                put(HitKind::Trip, one.id.text(), one.title, one.note + "\n" + one.sourceName, one.start));
        for (const Stay &one : history.stays)
            SNUG_TRY(put(HitKind::Stay, one.id.text(), one.name, "", one.from));
        for (const Happening &one : history.happenings)
            SNUG_TRY(
                put(HitKind::Happening, one.id.text(), m_texts.word("events", one.kind), one.note, one.at));
        return done();
    }

private:
    Status put(HitKind kind, const std::string &id, const std::string &title, const std::string &body,
               const std::optional<LocalTime> &at)
    {
        m_insert.bind(1, title);
        m_insert.bind(2, body);
        m_insert.bind(3, static_cast<std::int64_t>(kind));
        m_insert.bind(4, id);
        m_insert.bind(5, at ? formatLocal(*at) : "");
        return m_insert.run();
    }

    Status putFinding(const FindingHistory &one)
    {
        const std::string title =
            m_texts.point(one.finding.point).title + ": " + m_texts.word("defects", one.finding.defect);
        std::string body = one.finding.place.named;
        for (const Look &look : one.looks)
            body += "\n" + look.note + "\n" + look.by;
        for (const Photo &photo : one.photos)
            body += "\n" + photo.caption;
        for (const Drawing &drawing : one.drawings) {
            for (const DrawnShape &shape : drawing.shapes)
                body += "\n" + shape.text;
        }
        return put(HitKind::Finding, one.finding.id.text(), title, body, one.finding.opened);
    }

    Status putWalk(const WalkRecord &one)
    {
        SNUG_TRY(put(HitKind::Walk, one.walk.id.text(), m_texts.kindName(one.walk.kind), one.walk.by,
                     one.walk.started));
        for (const Mark &mark : one.marks) {
            if (!mark.note.empty()) // a mark without words of its own is found by its point
                SNUG_TRY(put(HitKind::Mark, one.walk.id.text(), m_texts.point(mark.point).title,
                             mark.note + "\n" + mark.by, mark.at));
        }
        return done();
    }

    Status putMend(const Mend &one, const RigHistory &history)
    {
        std::vector<std::string> points;
        for (const std::string &point : one.points)
            points.push_back(m_texts.point(point).title);
        for (const FindingHistory &finding : history.findings) {
            for (const Mend &mend : finding.mends) {
                if (mend.id == one.id)
                    points.push_back(m_texts.point(finding.finding.point).title);
            }
        }
        std::string body = one.by + "\n" + one.cost;
        for (const MendPart &part : one.parts)
            body += "\n" + part.name;
        const std::string about = join(points, ", ");
        const std::string what = one.what.empty() && about.empty() ? one.action : one.what;
        const std::string title = about.empty() || what.empty() ? about + what : about + ": " + what;
        return put(HitKind::Mend, one.id.text(), title, body, one.at);
    }

    Statement &m_insert;
    const Catalogue &m_catalogue;
    const Texts &m_texts;
};

// "seal 2026" -> "seal"* "2026"*: nothing that is typed is taken for a word of SQLite's own language.
std::string queryOf(std::string_view words)
{
    std::string query;
    std::string word;
    const auto end = [&] {
        if (!word.empty())
            query += (query.empty() ? "\"" : " \"") + word + "\"*";
        word.clear();
    };
    for (const char letter : words) {
        const bool isPart = static_cast<unsigned char>(letter) >= 0x80 || (letter >= '0' && letter <= '9') ||
                            (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z');
        if (isPart)
            word += letter;
        else
            end();
    }
    end();
    return query;
}

} // namespace

std::string_view slug(HitKind kind)
{
    constexpr std::array names = {"point", "finding", "mark", "mend", "walk", "trip", "stay", "event"};
    return names.at(static_cast<std::size_t>(kind));
}

Result<SearchIndex> SearchIndex::make(const Catalogue &catalogue, const RigHistory &history,
                                      const Texts &texts)
{
    Result<Connection> db = Connection::open(":memory:", sqlite::OpenMode::Create);
    if (!db)
        return db.error();
    SNUG_TRY(db->exec(
        "CREATE VIRTUAL TABLE words USING fts5(title, body, kind UNINDEXED, id UNINDEXED, at UNINDEXED, "
        "tokenize = 'unicode61 remove_diacritics 2'); BEGIN"));
    {
        Result<Statement> insert = db->prepare("INSERT INTO words VALUES(?, ?, ?, ?, ?)");
        if (!insert)
            return insert.error();
        SNUG_TRY(Filler(*insert, catalogue, texts).fill(history));
    }
    SNUG_TRY(db->exec("COMMIT"));
    return SearchIndex(std::move(db).value());
}

Result<std::vector<Hit>> SearchIndex::find(std::string_view words, std::size_t limit) const
{
    std::vector<Hit> hits;
    const std::string query = queryOf(words);
    if (query.empty())
        return hits;
    Result<Statement> rows = m_db.prepare(
        "SELECT kind, id, title, snippet(words, -1, '', '', '…', 12), at FROM words WHERE words MATCH ? "
        "ORDER BY bm25(words, 4.0, 1.0), at DESC LIMIT ?");
    if (!rows)
        return rows.error();
    rows->bind(1, query);
    rows->bind(2, static_cast<std::int64_t>(limit));
    SNUG_TRY(rows->each([&] {
        hits.push_back({kinds.at(static_cast<std::size_t>(rows->integer(0))), rows->text(1), rows->text(2),
                        replaceAll(rows->text(3), "\n", " "), parseLocal(rows->text(4))});
        return done();
    }));
    return hits;
}

} // namespace snugwalk
