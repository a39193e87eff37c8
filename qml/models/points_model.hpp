// SPDX-License-Identifier: Apache-2.0
// The points of the rig as its owner has them: own ones, hidden ones, and how often each is looked at.
#pragma once

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct PointEntry {
    QString key; ///< slug
    QString title;
    QString zone;
    QString every; ///< "every 12 months or 10 000 km"
    QString note;  ///< whose choice, and what the catalogue has
    bool isHidden = false;
    bool isOwn = false;
    bool hasOwnInterval = false;
};

class PointRowModel : public RowModel<PointEntry> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
public:
    explicit PointRowModel(QObject *parent);
};

class PointsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(snugwalk::PointRowModel *rows READ rows CONSTANT)
    Q_PROPERTY(QVariantList stands READ stands NOTIFY changed)
    Q_PROPERTY(QVariantList zones READ zones NOTIFY changed)
    Q_PROPERTY(QVariantList consequences READ consequences NOTIFY changed)
public:
    PointsModel(const ActDesk *desk, QObject *parent);

    /// "138 points, 1 of your own, 1 hidden."
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] PointRowModel *rows() { return &m_rows; }
    /// [{slug, name}]: what a point of one's own may name.
    [[nodiscard]] QVariantList stands() const;
    [[nodiscard]] QVariantList zones() const;
    [[nodiscard]] QVariantList consequences() const;

    void show(const Shown &shown);

    /// Only points with this word in their title or zone; an empty one shows all.
    Q_INVOKABLE void filter(const QString &words);
    Q_INVOKABLE void hide(const QString &point);
    Q_INVOKABLE void showAgain(const QString &point);
    /// \param months whole months, or empty. \param distance "10 000 km", or empty.
    Q_INVOKABLE void setEvery(const QString &point, const QString &months, const QString &distance);
    Q_INVOKABLE void clearEvery(const QString &point);
    /// \param map {title, look, pass, stand, zone, consequence, months, distance}; `added` follows.
    Q_INVOKABLE void add(const QVariantMap &map);

Q_SIGNALS:
    void changed();
    void added();

private:
    [[nodiscard]] const Catalogue &catalogue() const { return m_shown.catalogue(*m_desk->parts->catalogue); }
    template <typename Act>
    void run(Act act);
    [[nodiscard]] std::vector<PointEntry> entries() const;

    const ActDesk *m_desk;
    Shown m_shown;
    PointRowModel m_rows;
    QString m_words;
};

} // namespace snugwalk
