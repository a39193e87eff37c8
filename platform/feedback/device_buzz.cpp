// SPDX-License-Identifier: Apache-2.0
// On Android by the view's own feedback, which follows the person's system setting and needs no permission.
// Not run on a device here.
#include "feedback/device_buzz.hpp"

#include <QtGlobal>

#ifdef Q_OS_ANDROID
#include <QCoreApplication>
#include <QJniObject>
#endif

namespace snugwalk {

#ifdef Q_OS_ANDROID
namespace {

// HapticFeedbackConstants of Android's View, from memory: VIRTUAL_KEY 1, LONG_PRESS 0.
constexpr int virtualKey = 1;
constexpr int longPress = 0;

} // namespace

bool deviceCanBuzz() { return true; }

void deviceBuzz(Cue cue)
{
    const int kind = cue == Cue::Written ? virtualKey : longPress;
    QNativeInterface::QAndroidApplication::runOnAndroidMainThread([kind] {
        QJniObject activity = QNativeInterface::QAndroidApplication::context();
        QJniObject window = activity.callObjectMethod("getWindow", "()Landroid/view/Window;");
        QJniObject view = window.callObjectMethod("getDecorView", "()Landroid/view/View;");
        if (view.isValid())
            view.callMethod<jboolean>("performHapticFeedback", "(I)Z", jint(kind));
    });
}
#else
bool deviceCanBuzz() { return false; }
void deviceBuzz(Cue) {}
#endif

} // namespace snugwalk
