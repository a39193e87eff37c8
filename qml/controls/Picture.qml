// SPDX-License-Identifier: Apache-2.0
// Where the pixels of a photo come from: always the image provider, which reads on a thread of its own. An
// image that reads a file itself looks for it on the thread that draws.
pragma Singleton
import QtQuick

QtObject {
    /// \param photo a stored photo's hash, or the address of a file while it is not written down yet
    function of(photo: string, full: bool): string {
        if (photo === "" || photo.startsWith("image:"))
            return photo;
        if (photo.indexOf(":") >= 0)
            return "image://photo/file/" + Qt.btoa(photo).replace(/\//g, "_").replace(/\+/g, "-");
        return "image://photo/" + (full ? "full/" : "thumb/") + photo;
    }
}
