// SPDX-License-Identifier: Apache-2.0
// What a person's finger does: finds a word on the screen, brings it into view, taps it.
#pragma once

#include <functional>

#include <QPointF>
#include <QString>
#include <QVariant>

class QQuickItem;
class QQuickWindow;

namespace snugwalk {
class Wiring;
}

namespace snugwalk::journey {

class Finger {
public:
    /// Goes by the window that is open, which another logbook replaces.
    explicit Finger(Wiring &app) : m_app(app) {}

    /// Taps the thing that a screen reader would call `words`, waiting up to 10 s for it to show.
    /// Ends the program with a message when it does not: a journey cannot go on without it.
    void tap(const QString &words);
    /// The first whose name starts with `start`.
    void tapStarting(const QString &start);
    /// Types into the field of that label in place of what stands there; touching the field is a tap.
    void type(const QString &label, const QString &text);
    /// Touches the field of that label, which brings up what is typed with.
    void touchField(const QString &label);
    /// Puts a longer text into a field as one does who has copied it.
    void paste(const QString &label, const QString &text);
    /// Presses of a screen so far.
    [[nodiscard]] int taps() const { return m_taps; }

    /// True when such a thing can be tapped now.
    [[nodiscard]] bool sees(const QString &words) const;
    /// True when these words stand anywhere on the screen.
    [[nodiscard]] bool reads(const QString &words) const;
    /// Touches an item at shares of its width and height, wherever it is on the page.
    void touch(QQuickItem &item, double across, double down);
    /// The first visible item whose property has that value.
    [[nodiscard]] QQuickItem *itemWith(const char *property, const QVariant &value) const;
    [[nodiscard]] QQuickItem *itemOfType(const QString &qmlType) const;

    /// Runs the event loop until `condition`, or ends the program saying what was waited for.
    void waitFor(const std::function<bool()> &condition, const QString &what, int patienceMs = 10'000);

private:
    using Match = std::function<bool(const QString &)>;
    [[nodiscard]] QQuickItem *find(const Match &match) const;
    void tapMatching(const Match &match, const QString &what);

    [[nodiscard]] QQuickWindow &window() const;
    void press(QPointF at);
    [[nodiscard]] QQuickItem &inputOf(const QString &label);

    Wiring &m_app;
    int m_taps = 0;
};

[[noreturn]] void giveUp(const QString &why);
void expect(bool condition, const QString &what);

} // namespace snugwalk::journey
