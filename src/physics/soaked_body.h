#pragma once

#include <vector>

#include "quantities/quantity.h"

/// Water soaking into a body and then evening out inside it, as diffusion with a constant diffusivity. Everything is
/// counted as what is *missing* to capacity: 1 dry, 0 at capacity, because what is missing in a short cylinder is the
/// product of what is missing in a long cylinder and in a sheet. Lengths are in units of the body's reach: the radius,
/// or half the thickness of a sheet.
namespace baitwright {

/// A sheet (half its thickness is its reach), a long cylinder, a sphere.
enum class BodyShape { sheet, cylinder, sphere };

/// One body after a soak: under water for the Fourier number Fo = D t / reach^2, its surface at capacity from the
/// start, its inside dry. Afterwards it lies drained, nothing passes its surface, and the water evens out; tau = D t /
/// reach^2 counts from the draining.
///
/// With lambda_n the body's eigenvalues at a surface held at capacity (sheet (n - 1/2) pi, cylinder J0(lambda) = 0,
/// sphere n pi), mu_m those at a closed one (sheet m pi, cylinder J1(mu) = 0, sphere tan mu = mu), d = 1, 2, 3 its
/// dimensions, and S(mu) = sum_n exp(-lambda_n^2 Fo) / (lambda_n^2 - mu^2):
///     missing on average   2 d S(0)                                                (no draining changes it)
///     missing at the core  2 d S(0) + sum_m (4 / s_m) S(mu_m) exp(-mu_m^2 tau)
///     missing at the surface  2 d S(0) + sum_m  4        S(mu_m) exp(-mu_m^2 tau)
/// where s_m, the surface's value of the m-th closed shape, is (-1)^m, J0(mu_m), sin(mu_m)/mu_m.
/// **Source**: Crank, The Mathematics of Diffusion, 2nd ed. 1975, eq. 4.18, 5.23, 6.18, 6.20 for the soak (from
/// memory); the drained part is our own expansion of the soaked profile in the closed body's eigenfunctions (for the
/// sphere tan b = b, as in Crank's treatment of an impermeable surface). **Valid for**: Fo >= 1e-6, tau >= 0; throws
/// InputError "out-of-range" below. **Test**: rows CRANK_SPHERE, CRANK_CYL_SLAB; `tests/reference/soaked_body.csv`
/// (SciPy).
class SoakedBody {
public:
    SoakedBody(BodyShape shape, Ratio fourier_number);

    [[nodiscard]] Ratio missing_mean() const { return mean_; }
    [[nodiscard]] Ratio missing_core(Ratio drained) const { return missing(drained).core; }
    [[nodiscard]] Ratio missing_surface(Ratio drained) const { return missing(drained).surface; }
    /// Both at once, for little more than one.
    struct Missing {
        double core, surface;
    };
    [[nodiscard]] Missing missing(Ratio drained) const;
    /// At a distance from the middle, 0 to 1 in units of the reach, once it has been drained for a while (tau >= 1e-6).
    [[nodiscard]] Ratio missing_inside(Ratio distance, Ratio drained) const;

private:
    [[nodiscard]] double missing_core_at_once() const;
    [[nodiscard]] double sum_with(double mu_squared) const;

    struct SoakTerm {
        double lambda_squared, decay;  // decay = exp(-lambda^2 Fo)
    };
    struct DrainTerm {
        double mu, core, surface;
    };
    [[nodiscard]] DrainTerm drain_term(int m) const;

    BodyShape shape_;
    std::vector<SoakTerm> soak_;
    std::vector<DrainTerm> drain_;  // the first few; later ones are worked out when a very short time needs them
    double mean_ = 0;
};

/// What is missing on average after the soak alone, without what `SoakedBody` gets ready for the draining. At short
/// times by the forms for those: 1 - 2 sqrt(Fo/pi) for the sheet, 1 - 4 sqrt(Fo/pi) + Fo + Fo^1.5/(3 sqrt(pi)) for the
/// cylinder, 1 - 6 sqrt(Fo/pi) + 3 Fo for the sphere.
/// **Source**: Crank 1975, eq. 4.20, 5.24, 6.22 (from memory). **Valid for**: Fo >= 0, any. **Test**: rows of
/// `tests/reference/crank_series.csv`.
Ratio missing_after_soak(BodyShape shape, Ratio fourier_number);

/// The m-th eigenvalue (m from 1) of the body with its surface held, and with its surface closed, to 1e-14.
/// **Source**: zeros of J0 and J1: McMahon's expansion, Abramowitz & Stegun 1964, 9.5.12 (from memory), Boost below the
/// tenth; tan mu = mu: Newton's steps from mu ~ (m + 1/2) pi. **Test**: `tests/physics/soaked_body_test.cpp`, rows of
/// SciPy.
double held_eigenvalue(BodyShape shape, int m);
double closed_eigenvalue(BodyShape shape, int m);

}  // namespace baitwright
