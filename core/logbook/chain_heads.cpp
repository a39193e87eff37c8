// SPDX-License-Identifier: Apache-2.0
// One row a stream.
#include "logbook/chain_heads.hpp"

#include "base/text.hpp"

namespace snugwalk {

Result<std::vector<ChainHead>> chainHeads(Logbook &book)
{
    Result<sqlite::Statement> rows = book.db().prepare(
        "SELECT s.label, s.name, e.seq, e.hash FROM stream s JOIN entry e ON e.stream = s.id "
        "WHERE e.seq = (SELECT max(seq) FROM entry WHERE stream = s.id) "
        "ORDER BY s.label, s.name");
    if (!rows)
        return rows.error();
    std::vector<ChainHead> heads;
    SNUG_TRY(rows->each([&]() -> Status {
        const auto hash = Hash::fromBytes(rows->view(3));
        if (!hash)
            return Error{Errc::Corrupt, "an entry's hash is cut short", book.file(),
                         "run `snugwalk check --deep`"};
        heads.push_back({rows->text(0), toHex(rows->view(1)), rows->integer(2), *hash});
        return done();
    }));
    return heads;
}

} // namespace snugwalk
