// SPDX-License-Identifier: Apache-2.0
// How it went over time: one kind of plot after another, its numbers, and the file it becomes.
#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "report/plot/plot_ask.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class PlotsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY changed)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY changed)
    Q_PROPERTY(QVariantList subjects READ subjects NOTIFY changed)
    Q_PROPERTY(QString subject READ subject WRITE setSubject NOTIFY changed)
    Q_PROPERTY(bool all READ isAll WRITE setAll NOTIFY changed)
    Q_PROPERTY(bool hasMore READ hasMore NOTIFY changed)
    Q_PROPERTY(QVariantList plots READ plots NOTIFY changed)
    Q_PROPERTY(int which READ which WRITE setWhich NOTIFY changed)
    Q_PROPERTY(int serial READ serial NOTIFY changed)
    Q_PROPERTY(QVariantList forms READ forms NOTIFY changed)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
    Q_PROPERTY(QString saved READ saved NOTIFY changed)
public:
    PlotsModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0 || m_saving > 0; }
    /// [{slug, name}]
    [[nodiscard]] QVariantList kinds() const;
    [[nodiscard]] QString kind() const { return Voice::text(snugwalk::slug(m_ask.kind)); }
    void setKind(const QString &kind);
    /// [{slug, name}]: points and findings that this kind can be about; the first is taken without a choice.
    [[nodiscard]] QVariantList subjects() const;
    [[nodiscard]] QString subject() const { return m_subject; }
    void setSubject(const QString &subject);
    /// Every month, not the last two years alone.
    [[nodiscard]] bool isAll() const { return m_ask.months == 0; }
    void setAll(bool all);
    /// Whether months lie further back than two years, or did before all were asked for.
    [[nodiscard]] bool hasMore() const;
    /// [{slug, title, about, notes, empty, head, rows: [{cells, words}]}]
    [[nodiscard]] QVariantList plots() const { return m_rows; }
    /// The one that is looked at.
    [[nodiscard]] int which() const { return m_which; }
    void setWhich(int which);
    /// Another number for other plots, so that pictures are asked for again.
    [[nodiscard]] int serial() const { return m_serial; }
    /// [{slug, name, filter}]: endings of files.
    [[nodiscard]] QVariantList forms() const;
    /// {what, act}; empty when nothing went wrong.
    [[nodiscard]] QVariantMap fault() const { return m_fault; }
    /// Name of the file written last; "" before.
    [[nodiscard]] QString saved() const { return m_saved; }

    void show(const Shown &shown);

    /// \param thing "", a kind, or kind/subject as in "concern/<finding>"
    Q_INVOKABLE void open(const QString &thing);
    Q_INVOKABLE void close() { m_open = false; }
    /// The plot `which` laid out, see plot_picture.hpp.
    Q_INVOKABLE QVariantMap picture(double width, double height, double letter, double stroke,
                                    const QString &family) const;
    Q_INVOKABLE QString suggested(const QString &ending) const;
    /// Writes the plot that is looked at. \param file a file's address or path
    Q_INVOKABLE void save(const QString &ending, const QString &file);

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const Plot *current() const;
    void ask();
    void take(std::vector<Plot> plots);
    void tell(const Error &error);

    const ActDesk *m_desk;
    Shown m_shown;
    PlotAsk m_ask;
    QString m_subject;
    std::vector<Plot> m_plots;
    QVariantList m_rows;
    QVariantMap m_fault;
    QString m_saved;
    bool m_open = false;
    int m_which = 0;
    int m_serial = 0;
    int m_waiting = 0;
    int m_saving = 0;
};

} // namespace snugwalk
