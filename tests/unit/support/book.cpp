// SPDX-License-Identifier: Apache-2.0
// Opening and closing a test's logbook.
#include "support/book.hpp"

#include "keys/hash.hpp"

namespace snugwalk::test {

LocalTime timeAt(std::string_view text)
{
    const auto time = parseLocal(text);
    SNUG_ASSERT(time.has_value());
    return *time;
}

TestBook::TestBook(std::string seed)
    : clock(timeAt("2026-03-14T09:00:00+13:00")), ids("ids of " + seed), m_seed(std::move(seed))
{}

LogbookOptions TestBook::options(bool create)
{
    const Hash secret = blake2b("device " + m_seed);
    return {DeviceKey::fromSeed(secret.view()), "device " + m_seed, &clock, &ids, create};
}

Result<Logbook> TestBook::tryOpen(const std::string &file, bool create)
{
    return Logbook::open(file, options(create));
}

Logbook &TestBook::book()
{
    if (!m_book)
        m_book.emplace(tryOpen(file()).value());
    return *m_book;
}

Logbook &TestBook::reopened()
{
    close();
    return book();
}

Hash projectionNow(Logbook &book) { return projectionHash(book.db()).value(); }

Hash projectionRebuilt(Logbook &book)
{
    auto transaction = sqlite::Transaction::begin(book.db()).value();
    SNUG_ASSERT(rebuildProjection(book.db()).has_value());
    SNUG_ASSERT(std::move(transaction).commit().has_value());
    return projectionNow(book);
}

std::int64_t entryCount(Logbook &book) { return book.db().number("SELECT count(*) FROM entry").value(); }

} // namespace snugwalk::test
