// SPDX-License-Identifier: Apache-2.0
// Rows as the C++ model of this name gives them.
import Snugwalk.Mock

RowsModel {}
