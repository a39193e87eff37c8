// SPDX-License-Identifier: Apache-2.0
// A report while it is chosen, looked at and saved.
#pragma once

#include <memory>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "report_desk.hpp"
#include "report_pictures.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class ReportModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY changed)
    Q_PROPERTY(QVariantList forms READ forms NOTIFY changed)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY changed)
    Q_PROPERTY(QString sheet READ sheet WRITE setSheet NOTIFY changed)
    Q_PROPERTY(QString place READ place WRITE setPlace NOTIFY changed)
    Q_PROPERTY(bool ownData READ ownData WRITE setOwnData NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QStringList pages READ pages NOTIFY changed)
    Q_PROPERTY(int pageCount READ pageCount NOTIFY changed)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
    Q_PROPERTY(QString saved READ saved NOTIFY changed)
public:
    ReportModel(const ActDesk *desk, QObject *parent);

    [[nodiscard]] bool isBusy() const { return m_looking || m_saving > 0; }
    /// [{slug, name}]
    [[nodiscard]] QVariantList kinds() const;
    /// [{slug, name, filter}]: endings of the files that can be made.
    [[nodiscard]] QVariantList forms() const;
    [[nodiscard]] QString kind() const { return Voice::text(m_wish.kind); }
    void setKind(const QString &kind);
    [[nodiscard]] QString sheet() const { return Voice::text(m_wish.sheet); }
    void setSheet(const QString &sheet);
    [[nodiscard]] QString place() const { return Voice::text(m_wish.place); }
    void setPlace(const QString &place);
    [[nodiscard]] bool ownData() const { return m_wish.ownData; }
    void setOwnData(bool kept);
    [[nodiscard]] QString title() const { return m_look.title; }
    [[nodiscard]] QString words() const { return m_look.words; }
    /// Addresses of the first pages.
    [[nodiscard]] QStringList pages() const { return m_pages; }
    [[nodiscard]] int pageCount() const { return m_look.pageCount; }
    /// {what, act}; empty when nothing went wrong.
    [[nodiscard]] QVariantMap fault() const { return m_fault; }
    /// Name of the file written last; "" before.
    [[nodiscard]] QString saved() const { return m_saved; }

    [[nodiscard]] std::shared_ptr<const ReportSheets> sheets() const { return m_sheets; }
    void show(const Shown &shown);

    /// From here on the pages follow what is chosen, until `close`.
    Q_INVOKABLE void open();
    Q_INVOKABLE void close();
    /// An address for the file in the person's home: rig, kind and day.
    Q_INVOKABLE QString suggested(const QString &ending) const;
    /// Writes the report. \param file a file's address or path
    Q_INVOKABLE void save(const QString &ending, const QString &file);

Q_SIGNALS:
    void changed();

private:
    void wish(const ReportWish &wish);
    void lookAgain();
    void take(Result<ReportLook> look);
    void tell(const Error &error);

    const ActDesk *m_desk;
    Shown m_shown;
    ReportWish m_wish;
    ReportLook m_look;
    std::shared_ptr<ReportSheets> m_sheets = std::make_shared<ReportSheets>();
    QStringList m_pages;
    QVariantMap m_fault;
    QString m_saved;
    bool m_open = false;
    bool m_looking = false;
    bool m_again = false; ///< what was asked for has changed while it was drawn
    int m_serial = 0;
    int m_saving = 0;
};

} // namespace snugwalk
