// SPDX-License-Identifier: Apache-2.0
// What a device gives back to hand and ear; the makers live in platform/feedback.
#pragma once

namespace snugwalk {

/// There are two and no more: nothing sounds while a person looks, climbs or thinks.
enum class Cue {
    Written, ///< the disk has the mark
    Undone,  ///< the disk has the undo
};

class FeedbackSource {
public:
    virtual ~FeedbackSource() = default;
    [[nodiscard]] virtual bool canSound() const = 0;
    [[nodiscard]] virtual bool canBuzz() const = 0;
    virtual void sound(Cue cue) = 0;
    virtual void buzz(Cue cue) = 0;
};

} // namespace snugwalk
