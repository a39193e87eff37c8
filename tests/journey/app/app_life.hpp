// SPDX-License-Identifier: Apache-2.0
// One life of the app in a journey: opened over a logbook at a time of day, used by a finger, pictured.
#pragma once

#include <map>

#include <QString>
#include <QStringList>

#include "finger.hpp"
#include "options.hpp"
#include "wiring.hpp"

namespace snugwalk::journey {

class Life {
public:
    /// What its driver says on the command line: ROLE BOOK SHOTS TIME [NAME=VALUE ...].
    struct Given {
        QString role;
        QString book;
        QString shots; ///< folder for pictures; they are looked at, never compared
        QString time;  ///< the clock stands there
        QMap<QString, QString> more;
    };

    /// Opens the app and waits until its first page stands.
    Life(const Given &given, Wiring::Mode mode);

    [[nodiscard]] Wiring &app() { return *m_app; }
    [[nodiscard]] Session &session() { return m_app->session(); }
    [[nodiscard]] Finger &finger() { return *m_finger; }
    [[nodiscard]] const QString &role() const { return m_given.role; }
    [[nodiscard]] const QString &book() const { return m_given.book; }
    /// What the driver gave under that name; it must have.
    [[nodiscard]] QString given(const QString &name) const;

    [[nodiscard]] QString place();
    /// Waits until a page is open.
    void arrive(const QString &place);
    /// Waits until nothing loads, moves or is on its way to the disk.
    void settle();
    /// Keeps a picture of the window once it stands still.
    void shot(const QString &name);

private:
    Given m_given;
    std::unique_ptr<Wiring> m_app;
    std::unique_ptr<Finger> m_finger;
};

/// The given of a command line; ends the program when it has no such form.
[[nodiscard]] Life::Given readGiven(const QStringList &arguments);

using Story = void (*)(Life &);
using Stories = std::map<QString, Story>;

/// `main` of journeys: lives the life that the command line names and says "done"; 0 when all went well.
[[nodiscard]] int live(int argc, char **argv, const Stories &stories);

} // namespace snugwalk::journey
