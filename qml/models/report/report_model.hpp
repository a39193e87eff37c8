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
    Q_PROPERTY(QVariantList walks READ walks NOTIFY changed)
    Q_PROPERTY(QVariantList others READ others NOTIFY changed)
    Q_PROPERTY(QVariantList findings READ findings NOTIFY changed)
    Q_PROPERTY(QString walk READ walk WRITE setWalk NOTIFY changed)
    Q_PROPERTY(QString other READ other WRITE setOther NOTIFY changed)
    Q_PROPERTY(QStringList chosen READ chosen WRITE setChosen NOTIFY changed)
    Q_PROPERTY(bool hasSite READ hasSite NOTIFY changed)
    Q_PROPERTY(QVariantMap site READ site NOTIFY changed)
    Q_PROPERTY(QVariantList signers READ signers NOTIFY changed)
    Q_PROPERTY(bool isSigned READ isSigned NOTIFY changed)
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

    /// [{slug, name}] of the walks it may tell of, "" being the last that suits; empty for other kinds.
    [[nodiscard]] QVariantList walks() const;
    /// The same for the earlier one of two; empty for a kind that tells of one.
    [[nodiscard]] QVariantList others() const;
    /// [{slug, name}] of the findings it may tell of; empty for other kinds.
    [[nodiscard]] QVariantList findings() const;
    [[nodiscard]] QString walk() const;
    void setWalk(const QString &id);
    [[nodiscard]] QString other() const;
    void setOther(const QString &id);
    /// Ids of findings; none: all that suit.
    [[nodiscard]] QStringList chosen() const;
    void setChosen(const QStringList &ids);
    /// Whether it says how to get at the rig.
    [[nodiscard]] bool hasSite() const;
    /// {access, power, key}, as typed.
    [[nodiscard]] QVariantMap site() const;
    Q_INVOKABLE void setSite(const QString &part, const QString &text);
    /// [{name, signed}], a line to sign on each.
    [[nodiscard]] QVariantList signers() const;
    [[nodiscard]] bool isSigned() const { return !m_wish.signatures.empty(); }
    /// Puts a signature on a line. What is signed stays as it stood; choosing anything anew takes all away.
    /// \param strokes a list of lists of {x, y} in shares of the width
    Q_INVOKABLE void sign(int line, const QVariantList &strokes);
    Q_INVOKABLE void unsign(int line);

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
    void wish(ReportWish wish);
    void offer();
    void lookAgain();
    void take(Result<ReportLook> look);
    void tell(const Error &error);

    const ActDesk *m_desk;
    Shown m_shown;
    Shown m_drawn; ///< what the pages tell of: `m_shown`, or what it was when the first one signed
    ReportWish m_wish;
    ReportChoices m_choices; ///< of that kind, while the page is open
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
