// SPDX-License-Identifier: Apache-2.0
// Nothing but the file whose compilation makes the headers that all tests take precompiled.
#include <doctest/doctest.h>
