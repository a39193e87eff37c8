// SPDX-License-Identifier: Apache-2.0
// The map of a rig: where it went, stood and what was found there, on the outline of the land.
#pragma once

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "map_sheet.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// Sheets are laid out on the worker, one at a time and only the last one asked for; meanwhile the page moves
/// the one it has.
class MapModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed)
    Q_PROPERTY(QVariantMap sheet READ sheet NOTIFY changed)
    Q_PROPERTY(QVariantList wishes READ wishes NOTIFY changed)
    Q_PROPERTY(QVariantList members READ members NOTIFY changed)
public:
    MapModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_working; }
    /// Nothing of this rig has a place.
    [[nodiscard]] bool isEmpty() const;
    /// See map_words.hpp; empty until the first one is laid out.
    [[nodiscard]] QVariantMap sheet() const { return m_words; }
    /// [{slug, name, on}]: what may be shown.
    [[nodiscard]] QVariantList wishes() const;
    /// [{kind, shape, id, title, detail}] of the group that was chosen; empty without one.
    [[nodiscard]] QVariantList members() const { return m_members; }

    void show(const Shown &shown);
    /// Looks at everything, or at one finding, trip or stay.
    Q_INVOKABLE void open(const QString &thing);
    /// No page shows it any more: nothing is laid out until `open`.
    Q_INVOKABLE void close();
    /// The opening in pixels, the least side of what is pressed, and how large its letters are.
    Q_INVOKABLE void fit(double width, double height, double target, double letterHeight);
    /// Moves the paper by so many pixels.
    Q_INVOKABLE void move(double across, double down);
    /// \param factor over 1 is nearer \param x, y stay where they are
    Q_INVOKABLE void zoom(double factor, double x, double y);
    /// Everything that is shown.
    Q_INVOKABLE void whole();
    /// findings, past, trips, stays: shows or hides them.
    Q_INVOKABLE void wish(const QString &slug, bool on);
    /// Chooses a group of the sheet; -1 for none.
    Q_INVOKABLE void choose(int group);
    /// Looks at the members of the chosen group alone.
    Q_INVOKABLE void lookCloser();
    /// Id of the trip whose line passes there; "" without one.
    [[nodiscard]] Q_INVOKABLE QString tripAt(double x, double y) const;

Q_SIGNALS:
    void changed();

private:
    void look();
    void take(MapSheet sheet);
    void tell();
    [[nodiscard]] MapItems items() const;
    [[nodiscard]] std::vector<GeoPoint> placesOf(const QString &thing) const;

    const ActDesk *m_desk;
    Shown m_shown;
    MapWish m_wish;
    MapView m_view;
    QString m_thing;
    bool m_open = false;
    bool m_placed = false; ///< the view looks somewhere
    bool m_working = false;
    bool m_again = false; ///< another view was asked for meanwhile
    std::optional<MapSheet> m_sheet;
    std::vector<MapItem> m_chosen;
    QVariantMap m_words;
    QVariantList m_members;
};

} // namespace snugwalk
