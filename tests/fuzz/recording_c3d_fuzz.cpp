// Any bytes as a C3D file: reader and inspector must answer or refuse. Run by ./test --fuzz.
#include "recordings/c3d_forces.h"
#include "recordings/c3d_summary.h"

#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
    using namespace amentum;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    C3dForceReader reader({});
    bool taken = true;
    for (std::size_t at = 0; taken && at < size; at += 700) // never at a block's end
        taken = static_cast<bool>(reader.take(bytes.substr(at, 700)));
    const auto recording = reader.finish();
    if (recording && (!taken || recording->plates.size() > 2 || recording->samples() > most_samples))
        std::abort();
    C3dForceReader across({.unit = ForceUnit::newton, .vertical = {"1"}, .lateral = {"x"}});
    if (across.take(bytes)) {
        const auto sideways = across.finish();
        if (sideways && sideways->plates.size() != 1)
            std::abort();
    }
    C3dInspector inspector;
    if (inspector.take(bytes))
        (void)inspector.finish();
    return 0;
}
