#include "recordings/force_recording.h"
