// SPDX-License-Identifier: Apache-2.0
// A session over a logbook in a folder of its own, with a clock that stands.
#pragma once

#include <memory>

#include "image/qt_codec.hpp"
#include "session.hpp"
#include "support/book.hpp"

namespace snugwalk::test {

class AppFixture {
public:
    enum class Book { Empty, Tandem, Demo };
    /// \param seed decides the device: two of one seed are one device.
    explicit AppFixture(Book book = Book::Tandem, const std::string &seed = "test");

    /// What the next session is made from; change it before `open`.
    AppParts parts;
    FixedClock &clock() { return m_home.clock; }
    [[nodiscard]] std::string file() const { return m_home.file(); }
    [[nodiscard]] const TempFolder &folder() const { return m_home.folder(); }

    /// A fresh session that has answered once; the one before it is gone, its taps written.
    Session &open();
    void close() { m_session.reset(); }
    [[nodiscard]] Session &session() { return *m_session; }
    [[nodiscard]] WalkModel &walk() { return *m_session->walk(); }
    /// Starts a walk and waits until the disk has it.
    void start(const QString &kind);
    /// Waits until nothing is on its way.
    void settle();
    /// The same logbook through a connection of its own, once the session is closed.
    [[nodiscard]] Logbook &book() { return m_home.reopened(); }
    void closeBook() { m_home.close(); }

private:
    TestBook m_home;
    QtCodec m_codec;
    std::unique_ptr<Session> m_session;
};

/// A photo of the demo.
[[nodiscard]] QString photoFile(const char *name);
/// The state of every line of the tape.
[[nodiscard]] QStringList tapeStates(WalkModel &walk);
/// The value of a role by its name.
[[nodiscard]] QVariant cell(const QAbstractItemModel &model, int row, const char *role);

} // namespace snugwalk::test
