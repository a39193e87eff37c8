// SPDX-License-Identifier: Apache-2.0
// One sentence a code; some places deserve their own.
#include "error_text.hpp"

#include <QCoreApplication>

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ErrorText)
public:
    static ErrorText of(const Error &error);
    static ErrorText ofCode(Errc code, const QString &where);
};

bool mentions(const Error &error, const char *word) { return error.where.find(word) != std::string::npos; }

ErrorText Words::ofCode(Errc code, const QString &where)
{
    switch (code) {
    case Errc::Usage:
    case Errc::InvalidInput:
        return {tr("Not understood: %1").arg(where), tr("Check what was typed, and try once more.")};
    case Errc::OutOfRange:
        return {tr("Beyond what can be true: %1").arg(where), tr("Check the number and its unit.")};
    case Errc::Unsupported:
        return {tr("This version cannot do that: %1").arg(where),
                tr("Install the newest version, or use another file.")};
    case Errc::NotFound:
        return {tr("Not found: %1").arg(where), tr("It may have been moved. Choose it again.")};
    case Errc::Conflict:
        return {tr("Something else has it: %1").arg(where),
                tr("Close other programs that use this logbook, then try once more.")};
    case Errc::Io:
        return {
            tr("The disk refused: %1").arg(where),
            tr("Nothing was lost before this. See that the disk is there, has room and may be written to.")};
    case Errc::Corrupt:
        return {tr("Damaged: %1").arg(where), tr("Stop writing to it and open a backup.")};
    case Errc::Network:
        return {tr("No connection: %1").arg(where), tr("Try once more where there is a network.")};
    }
    return {where, {}};
}

ErrorText Words::of(const Error &error)
{
    if (mentions(error, ", extent") || error.where == "extent")
        return {tr("How much it is was not understood."), tr("Write for example 14 mm, 1/2 in or 3.")};
    if (mentions(error, ", reading"))
        return {tr("A reading was not understood: %1").arg(QString::fromStdString(error.what)),
                tr("Write the number with its unit, for example 380 kPa or 55 psi.")};
    if (mentions(error, ", defect"))
        return {tr("It is not said what is wrong."), tr("Choose what it looks like.")};
    if (mentions(error, ", grade"))
        return {tr("It is not said how bad it is."), tr("Choose one of the five grades.")};
    if (mentions(error, ", reason"))
        return {tr("It is not said why it could not be looked at."), tr("Choose a reason.")};
    if (error.where == "place")
        return {tr("The spot is not on this rig."), tr("Point at the drawing once more.")};
    const std::string &where = error.where.empty() ? error.what : error.where;
    return ofCode(error.code, QString::fromStdString(where));
}

} // namespace

ErrorText errorText(const Error &error) { return Words::of(error); }

} // namespace snugwalk
