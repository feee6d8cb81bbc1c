// The whole drawing language: flags, materials, tape and marks. Its numbers are explained in DEVELOPERS.md.
#pragma once

#include "core/drawing/flags.h"
#include "core/drawing/materials.h"
#include "core/drawing/tape.h"
