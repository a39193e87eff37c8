// SPDX-License-Identifier: Apache-2.0
// A message handler that counts.
#include "message_watch.hpp"

#include <mutex>

#include <QtGlobal>

namespace snugwalk {
namespace {

std::mutex lock;
QStringList seen;
QtMessageHandler before = nullptr;

void watch(QtMsgType type, const QMessageLogContext &context, const QString &message)
{
    if (type == QtWarningMsg || type == QtCriticalMsg) {
        const std::lock_guard<std::mutex> guard(lock);
        seen << message;
    }
    before(type, context, message);
}

} // namespace

MessageWatch::MessageWatch() { before = qInstallMessageHandler(watch); }

MessageWatch::~MessageWatch() { qInstallMessageHandler(before); }

QStringList MessageWatch::warnings() const
{
    const std::lock_guard<std::mutex> guard(lock);
    return seen;
}

} // namespace snugwalk
