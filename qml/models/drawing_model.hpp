// SPDX-License-Identifier: Apache-2.0
// Lines drawn on photos: kept beside the untouched original, shown wherever the photo is shown.
#pragma once

#include <map>
#include <vector>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "drawing_words.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// Each line is on the disk at once for a photo of the logbook. For a file that is still to be written
/// down with its finding the lines are held here until then, see `linesOf`.
class DrawingModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QVariantMap drawn READ drawn NOTIFY changed)
    Q_PROPERTY(QString photo READ photo NOTIFY opened)
    Q_PROPERTY(QString words READ words NOTIFY opened)
    Q_PROPERTY(QVariantList shapes READ shapes NOTIFY changed)
    Q_PROPERTY(bool scaled READ isScaled NOTIFY changed)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
public:
    DrawingModel(const ActDesk *desk, QObject *parent);

    /// {hash or file address: shapes as `shapeMaps` gives them}, of photos with lines on them only.
    [[nodiscard]] QVariantMap drawn() const;
    /// Hash or file address of the photo at hand; "" when there is none.
    [[nodiscard]] QString photo() const { return m_photo; }
    /// What the photo shows and when it was taken.
    [[nodiscard]] QString words() const;
    [[nodiscard]] QVariantList shapes() const;
    /// Whether a ruler of known length is on it, so that others can be told by ratio.
    [[nodiscard]] bool isScaled() const;
    [[nodiscard]] bool canUndo() const { return !m_before.empty(); }
    /// Why the last line was not drawn; "" when it was.
    [[nodiscard]] QString problem() const { return m_problem; }

    void show(const Shown &shown);

    /// An empty name opens the newest photo of the first open finding that has one.
    Q_INVOKABLE void open(const QString &photo);
    /// \param aspect width over height of the upright picture, as it is drawn on.
    /// \param length as typed, for a ruler: "120 mm", "4 3/4 in"; empty to tell it by ratio.
    Q_INVOKABLE void add(const QString &kind, double x1, double y1, double x2, double y2, double aspect,
                         const QString &length);
    Q_INVOKABLE void eraseLast();
    Q_INVOKABLE void eraseAll();
    Q_INVOKABLE void undo();
    /// What a page hands over with a photo that is written down with its finding.
    Q_INVOKABLE QVariantList linesOf(const QString &file) const;

Q_SIGNALS:
    void changed();
    void opened();
    void problemChanged();
    /// The logbook has it: an act of its own, which undo takes back.
    void written();

private:
    struct Lines {
        std::vector<DrawnShape> shapes;
        double aspect = 4.0 / 3.0;
    };

    [[nodiscard]] const Photo *kept(const QString &hash) const;
    [[nodiscard]] Lines &at(const QString &photo) { return m_lines[photo]; }
    [[nodiscard]] std::optional<Length> readLength(DrawnShape &ruler, const QString &typed);
    void note(const QString &problem);
    void put(std::vector<DrawnShape> shapes);

    const ActDesk *m_desk;
    Shown m_shown;
    QString m_photo;
    QString m_problem;
    std::map<QString, Lines> m_lines;
    std::vector<std::vector<DrawnShape>> m_before; ///< of the photo at hand, oldest first
    int m_waiting = 0;                             ///< acts on their way to the disk
};

} // namespace snugwalk
